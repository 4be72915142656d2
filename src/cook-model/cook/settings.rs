use crate::heat::PitKind;
use crate::history::Tolerances;
use crate::plan::{Habits, Style};
use crate::quantity::{Moment, Temperature, TemperatureDifference};
use crate::safety::ProofRule;

/// What the cook decided for the whole cook.
#[derive(Clone, Debug, PartialEq)]
pub struct Settings {
    /// The kind of pit.
    pub pit_kind: PitKind,
    /// How much hotter than its mean each place on the rack is; empty while nothing was told, and
    /// then everything fits and heats alike.
    pub rack: Vec<TemperatureDifference>,
    /// How long things take around the cook.
    pub habits: Habits,
    /// How pieces follow each other.
    pub style: Style,
    /// The pit temperature to aim for.
    pub pit_target: Temperature,
    /// The air where the pieces rest.
    pub ambient: Temperature,
    /// When people eat, if that was said.
    pub dinner: Option<Moment>,
    /// The pull temperature of pieces that have none of their own; none leaves it to the lowest after
    /// which the rest proves a piece.
    pub pull_target: Option<Temperature>,
    /// How readings prove a piece.
    pub proof_rule: ProofRule,
    /// How far the thermometers may be off.
    pub tolerances: Tolerances,
    /// The chance, in percent, that a piece may be past its pull temperature at a check.
    pub check_risk_percent: u8,
    /// Whether hygiene prompts are shown.
    pub prompts_shown: bool,
}

impl Default for Settings {
    /// A 250 F pit and a mild day (common practice, no source), and each piece pulled so that its rest
    /// proves it.
    fn default() -> Self {
        Self {
            pit_kind: PitKind::default(),
            rack: Vec::new(),
            habits: Habits::default(),
            style: Style::default(),
            pit_target: Temperature::from_f(250.0),
            ambient: Temperature::from_f(70.0),
            dinner: None,
            pull_target: None,
            proof_rule: ProofRule::default(),
            tolerances: Tolerances::default(),
            check_risk_percent: 10,
            prompts_shown: true,
        }
    }
}
