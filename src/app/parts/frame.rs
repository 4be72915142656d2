//! Where moments and temperatures lie in a drawn curve.

use cook_model::quantity::{Moment, Span, Temperature, TemperatureUnit};

use crate::preferences;

/// The drawing's size in its own units; at 360 pixels one of them is about one pixel.
pub const WIDTH: f64 = 328.0;
/// Its height.
pub const HEIGHT: f64 = 190.0;
/// Room for the temperatures at the left, and the times below.
const LEFT: f64 = 38.0;
const RIGHT: f64 = 10.0;
const TOP: f64 = 10.0;
const BOTTOM: f64 = 26.0;
/// The most time labels that fit side by side.
const MOST_TIMES: i64 = 4;
/// Round steps between time labels, in minutes.
const STEPS: [i64; 8] = [5, 10, 15, 30, 60, 120, 240, 480];

/// The window of time and temperature that is drawn.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Frame {
    /// Its first moment.
    pub from: Moment,
    /// Its last.
    pub to: Moment,
    /// Its lowest temperature.
    pub low: Temperature,
    /// Its highest.
    pub high: Temperature,
}

impl Frame {
    /// Where a moment lies from the left, kept within the frame.
    pub fn x(self, at: Moment) -> f64 {
        let share = ratio(at - self.from, self.to - self.from).clamp(0.0, 1.0);
        LEFT + share * (WIDTH - LEFT - RIGHT)
    }

    /// Where a temperature lies from the top, kept within the frame.
    pub fn y(self, temperature: Temperature) -> f64 {
        let share = (temperature - self.low).c() / (self.high - self.low).c();
        HEIGHT - BOTTOM - share.clamp(0.0, 1.0) * (HEIGHT - TOP - BOTTOM)
    }

    /// Whether a moment is in the frame.
    pub fn holds(self, at: Moment) -> bool {
        self.from <= at && at <= self.to
    }

    /// The left, right, top and bottom of the drawn field.
    pub const fn edges(self) -> (f64, f64, f64, f64) {
        (LEFT, WIDTH - RIGHT, TOP, HEIGHT - BOTTOM)
    }

    /// Round moments to label.
    pub fn times(self) -> Vec<Moment> {
        let minutes = (self.to - self.from).num_minutes();
        let step = STEPS.into_iter().find(|step| minutes / step <= MOST_TIMES).unwrap_or(720);
        let first = self.from.timestamp().div_euclid(step * 60) + 1;
        (first..)
            .map_while(|count| Moment::from_timestamp(count * step * 60, 0))
            .take_while(|at| *at <= self.to)
            .collect()
    }

    /// Round temperatures to label, in the person's unit.
    pub fn temperatures(self) -> Vec<Temperature> {
        let unit = preferences::units().temperature;
        let step = match unit {
            TemperatureUnit::Fahrenheit => 40.0,
            TemperatureUnit::Celsius => 20.0,
        };
        let first = (self.low.in_unit(unit) / step).ceil() as i32;
        let last = (self.high.in_unit(unit) / step).floor() as i32;
        (first..=last).map(|count| Temperature::from_unit(f64::from(count) * step, unit)).collect()
    }

    /// A line through these points, as an SVG path.
    pub fn line(self, points: impl Iterator<Item = (Moment, Temperature)>) -> String {
        let mut path = String::new();
        for (at, temperature) in points {
            let letter = if path.is_empty() { 'M' } else { 'L' };
            path.push_str(&format!("{letter}{:.1} {:.1}", self.x(at), self.y(temperature)));
        }
        path
    }
}

fn ratio(part: Span, whole: Span) -> f64 {
    part.num_milliseconds() as f64 / (whole.num_milliseconds() as f64).max(1.0)
}
