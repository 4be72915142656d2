//! A small line chart with marked points, as SVG text.

use std::fmt::Write;

/// Size of the picture and its margins, px.
const SIZE: (f64, f64) = (640.0, 420.0);
const LEFT: f64 = 56.0;
const RIGHT: f64 = 16.0;
const TOP: f64 = 40.0;
const BOTTOM: f64 = 52.0;
/// Lines differ in marker too, so that colour is never the only sign.
const INKS: [&str; 4] = ["#000000", "#005aa0", "#aa4600", "#6a3d9a"];

/// One line of a chart.
pub struct Line {
    /// What it is called.
    pub name: &'static str,
    /// Its points.
    pub points: Vec<(f64, f64)>,
}

/// A chart.
pub struct Chart {
    /// What it shows.
    pub title: &'static str,
    /// What runs along it, and what runs up.
    pub labels: [&'static str; 2],
    /// Where the ticks are along it; the ends are the first and the last.
    pub along: Vec<f64>,
    /// Where the ticks are upwards.
    pub up: Vec<f64>,
    /// The lines.
    pub lines: Vec<Line>,
    /// Whether to draw the line where both are equal.
    pub diagonal: bool,
    /// Whether the points of a line are joined, or stand alone in small markers.
    pub joined: bool,
    /// Whether the names stand at the right-hand bottom rather than the right-hand top.
    pub names_low: bool,
}

impl Chart {
    /// The picture.
    pub fn svg(&self) -> String {
        let (wide, high) = SIZE;
        let mut svg = format!(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {wide} {high}\" \
             font-family=\"sans-serif\" font-size=\"14\">\n<title>{}</title>\n\
             <rect width=\"{wide}\" height=\"{high}\" fill=\"#fff\"/>\n\
             <text x=\"{LEFT}\" y=\"24\" font-size=\"16\">{}</text>\n",
            self.title, self.title
        );
        self.axes(&mut svg);
        if self.diagonal {
            let last = self.along[self.along.len() - 1].min(self.up[self.up.len() - 1]);
            let ends = [self.place((0.0, 0.0)), self.place((last, last))];
            path(&mut svg, &ends, "#888", "4 4");
        }
        for (index, line) in self.lines.iter().enumerate() {
            let ink = INKS[index % INKS.len()];
            let points: Vec<(f64, f64)> = line.points.iter().map(|p| self.place(*p)).collect();
            if self.joined {
                path(&mut svg, &points, ink, "none");
            }
            for point in points {
                marker(&mut svg, index, point, ink, if self.joined { 1.0 } else { 0.6 });
            }
            self.name(&mut svg, index, line.name, ink);
        }
        svg.push_str("</svg>\n");
        svg
    }

    fn place(&self, (x, y): (f64, f64)) -> (f64, f64) {
        let part = |v: f64, ticks: &[f64]| {
            let (low, high) = (ticks[0], ticks[ticks.len() - 1]);
            (v - low) / (high - low)
        };
        let (wide, high) = (SIZE.0 - LEFT - RIGHT, SIZE.1 - TOP - BOTTOM);
        (LEFT + wide * part(x, &self.along), TOP + high * (1.0 - part(y, &self.up)))
    }

    fn axes(&self, svg: &mut String) {
        let (first, last) = (self.along[0], self.along[self.along.len() - 1]);
        for &tick in &self.up {
            let ends = [self.place((first, tick)), self.place((last, tick))];
            path(svg, &ends, "#ddd", "none");
            let (x, y) = ends[0];
            let _ = writeln!(
                svg,
                "<text x=\"{:.1}\" y=\"{:.1}\" text-anchor=\"end\">{tick}</text>",
                x - 6.0,
                y + 5.0
            );
        }
        for &tick in &self.along {
            let (x, y) = self.place((tick, self.up[0]));
            let _ = writeln!(
                svg,
                "<text x=\"{x:.1}\" y=\"{:.1}\" text-anchor=\"middle\">{tick}</text>",
                y + 18.0
            );
        }
        let [along, up] = self.labels;
        let middle = LEFT + (SIZE.0 - LEFT - RIGHT) / 2.0;
        let _ = writeln!(
            svg,
            "<text x=\"{middle}\" y=\"{}\" text-anchor=\"middle\">{along}</text>\n\
             <text transform=\"translate(16 {}) rotate(-90)\" text-anchor=\"middle\">{up}</text>",
            SIZE.1 - 12.0,
            TOP + (SIZE.1 - TOP - BOTTOM) / 2.0
        );
    }

    fn name(&self, svg: &mut String, index: usize, name: &str, ink: &str) {
        let row = 20.0 * index as f64;
        let y = if self.names_low {
            SIZE.1 - BOTTOM - 20.0 * self.lines.len() as f64 + row
        } else {
            TOP + 14.0 + row
        };
        let x = SIZE.0 - RIGHT - 330.0;
        marker(svg, index, (x, y), ink, 1.0);
        let _ = writeln!(svg, "<text x=\"{}\" y=\"{}\">{name}</text>", x + 12.0, y + 5.0);
    }
}

fn path(svg: &mut String, points: &[(f64, f64)], ink: &str, dashes: &str) {
    let points: Vec<String> = points.iter().map(|(x, y)| format!("{x:.1},{y:.1}")).collect();
    let _ = writeln!(
        svg,
        "<polyline points=\"{}\" fill=\"none\" stroke=\"{ink}\" stroke-dasharray=\"{dashes}\" \
         stroke-width=\"1.5\"/>",
        points.join(" ")
    );
}

/// A marker whose shape tells the line.
fn marker(svg: &mut String, index: usize, (x, y): (f64, f64), ink: &str, size: f64) {
    let shape = match index % INKS.len() {
        0 => format!("<circle r=\"4\" fill=\"{ink}\"/>"),
        1 => format!("<path d=\"M0 -6l6 10h-12z\" fill=\"{ink}\"/>"),
        2 => format!("<path d=\"M-4 -4h8v8h-8z\" fill=\"{ink}\"/>"),
        _ => format!("<circle r=\"5\" fill=\"#fff\" stroke=\"{ink}\" stroke-width=\"2\"/>"),
    };
    let _ = writeln!(svg, "<g transform=\"translate({x:.1} {y:.1}) scale({size})\">{shape}</g>");
}
