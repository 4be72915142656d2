//! The same equations by general-purpose methods: those of the crate `differential-equations`
//! (Apache-2.0). Shared by the bench and by the test of equal error.

mod tolerances;

pub use tolerances::{TIMED, TIMED_BUT_WRONG};

use std::cell::RefCell;

use bench::Usual;
use cook_model::heat::{Body, Leg, System, Tuning};
use cook_model::quantity::{Span, Temperature, TemperatureDifference, seconds, to_seconds};
use differential_equations::prelude::{
    BackwardDifferentiationFormula, DiagonallyImplicitRungeKutta, ExplicitRungeKutta, IVP,
    ImplicitRungeKutta, ODE,
};

/// Nodes of a breast, and the water it lost.
const UNKNOWNS: usize = 28;
/// Heat content, J/m3, and water, kg/m2, that go with a kelvin: unknowns are counted in kelvins, so
/// that one tolerance serves all.
const HEAT_A_KELVIN: f64 = 3.8e6;
const WATER_A_KELVIN: f64 = 2e-3;
/// No trace takes as many steps, not even by an explicit method.
const MOST_STEPS: usize = 10_000_000;
/// Beside the absolute tolerance, so small that it does not count.
const RELATIVE: f64 = 1e-9;
/// How much closer than a step's error the iteration in an implicit method goes.
const ITERATED: f64 = 0.03;
/// Radau5 takes `0.1 r^(2/3)` for a relative tolerance `r`, and as many times the absolute one.
const RADAU_WIDENS: f64 = 100.0;

type Unknowns = [f64; UNKNOWNS];

/// The moments at which a trace is held to its error: every minute.
pub fn moments() -> Vec<Span> {
    (1..=Usual::END.num_minutes()).map(Span::minutes).collect()
}

/// A general method.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Method {
    /// Backward differentiation of variable order.
    Bdf,
    /// Implicit Runge-Kutta of fifth order.
    Radau5,
    /// Diagonally implicit Runge-Kutta of third order (Kvaerno 4/2/3).
    Kvaerno,
    /// Explicit Runge-Kutta of fifth order: not for stiff equations.
    DormandPrince,
}

/// The equations in kelvins.
struct Scaled<'a>(RefCell<(System<'a>, Unknowns, Unknowns)>);

fn scale(unknown: usize) -> f64 {
    if unknown + 1 == UNKNOWNS { WATER_A_KELVIN } else { HEAT_A_KELVIN }
}

impl ODE<f64, Unknowns> for Scaled<'_> {
    fn diff(&self, at: f64, kelvins: &Unknowns, rates: &mut Unknowns) {
        let (system, unknowns, given) = &mut *self.0.borrow_mut();
        for i in 0..UNKNOWNS {
            unknowns[i] = kelvins[i] * scale(i);
        }
        system.rates(seconds(at), unknowns, given);
        for i in 0..UNKNOWNS {
            rates[i] = given[i] / scale(i);
        }
    }
}

/// The core of a breast at moments of its cook and rest, which must be in order, have
/// [`Usual::OFF`] among them and [`Usual::END`] at the end, to a tolerance.
///
/// # Errors
/// What the solver says.
pub fn cores(
    usual: &Usual,
    method: Method,
    tolerance: TemperatureDifference,
    moments: &[Span],
) -> Result<Vec<Temperature>, String> {
    let begin = System::begin(&usual.body, usual.start);
    if begin.len() != UNKNOWNS {
        return Err(format!("{} unknowns", begin.len()));
    }
    let mut state = std::array::from_fn(|i| begin[i] / scale(i));
    let by = (method, tolerance.c());
    let (cook, rest) = moments.split_at(moments.partition_point(|at| *at <= Usual::OFF));
    let mut told = Vec::with_capacity(moments.len());
    for (leg, from, moments) in [(&usual.pit, Span::zero(), cook), (&usual.foil, Usual::OFF, rest)]
    {
        let states = through(&usual.body, leg, from, moments, state, by)?;
        state = *states.last().ok_or("no end")?;
        told.extend(states.iter().map(|state| state[0] * HEAT_A_KELVIN));
    }
    let tell = System::new(&usual.body, &usual.pit, Tuning::default());
    Ok(told.into_iter().map(|heat| tell.core(&[heat])).collect())
}

/// The states at moments of a leg, the last of which is its end.
fn through(
    body: &Body,
    leg: &Leg,
    from: Span,
    moments: &[Span],
    begin: Unknowns,
    (method, tolerance): (Method, f64),
) -> Result<Vec<Unknowns>, String> {
    let system = System::new(body, leg, Tuning::default());
    let scaled = Scaled(RefCell::new((system, [0.0; UNKNOWNS], [0.0; UNKNOWNS])));
    let from = to_seconds(from);
    let asked: Vec<f64> = moments.iter().map(|at| to_seconds(*at)).collect();
    let to = asked.last().copied().unwrap_or(from);
    let problem = IVP::ode(&scaled, from, to, begin).t_eval(asked);
    // One tolerance for each unknown: Radau5 would widen a single one again for each of them.
    macro_rules! solved {
        ($method:expr, $tolerance:expr) => {
            problem
                .method(
                    $method
                        .rtol([RELATIVE; UNKNOWNS])
                        .atol([$tolerance; UNKNOWNS])
                        .max_steps(MOST_STEPS),
                )
                .solve()
        };
    }
    let solution = match method {
        Method::Bdf => {
            solved!(BackwardDifferentiationFormula::adaptive().newton_tol(ITERATED), tolerance)
        }
        Method::Radau5 => {
            let given = tolerance / RADAU_WIDENS;
            solved!(ImplicitRungeKutta::radau5().newton_tol(ITERATED), given)
        }
        Method::Kvaerno => {
            let method = DiagonallyImplicitRungeKutta::kvaerno423();
            solved!(method.newton_tol(ITERATED * tolerance), tolerance)
        }
        Method::DormandPrince => solved!(ExplicitRungeKutta::dopri5(), tolerance),
    };
    let solution = solution.map_err(|error| format!("{error:?}"))?;
    Ok(solution.y)
}
