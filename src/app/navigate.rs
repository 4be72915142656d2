//! Which screen shows. Each screen has an address behind `#`, so the phone's own back works, and a
//! reload comes back to the same screen.

use cook_model::history::{DeviceId, EntryId};
use cook_model::kitchen::card::{Card, CardProblem};
use cook_model::kitchen::log::BagId;
use cook_model::piece::PieceId;
use leptos::ev;
use leptos::prelude::*;
use wasm_bindgen::JsValue;

/// A screen.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Screen {
    /// Begin a cook or go on with one.
    Start,
    /// The pieces and the plan.
    SetOut,
    /// What to do next, and the pieces in pull order.
    Live,
    /// The number pad for one piece.
    Piece(PieceId),
    /// One piece after another, in a round or at rest.
    Round,
    /// The number pad for the pit.
    Pit,
    /// Each piece's core over time.
    Curves,
    /// The day back from dinner.
    Plan,
    /// The pit, its rack, and how long things take.
    Habits,
    /// What is off the pit.
    Rest,
    /// Every entry.
    Log,
    /// The way to everything else.
    More,
    /// Units, look, hand, language.
    Settings,
    /// What proves a piece, and how far the thermometers may be off.
    Safety,
    /// A thermometer in ice water and boiling water.
    ThermometerCheck,
    /// What can hurt people.
    Cautions,
    /// What alarms do on this phone.
    AlarmsHere,
    /// The bags in the refrigerator and the freezer.
    Kitchen,
    /// The cook's own rub, and brines.
    Rub,
    /// Who gets which piece, and bags.
    Portions,
    /// How fast bags cool, and in which order to pack.
    Chill,
    /// One bag and its label.
    Bag(BagId),
    /// Labels to print.
    Labels,
    /// How long a bag needs in the bath, by its label's code.
    Reheat(Result<Card, CardProblem>),
}

impl Screen {
    /// Its address.
    fn address(self) -> String {
        let name = match self {
            Self::Start => "start",
            Self::SetOut => "set-out",
            Self::Live => "cook",
            Self::Piece(piece) => return format!("#piece-{}", piece.0),
            Self::Pit => "pit",
            Self::Round => "round",
            Self::Curves => "curves",
            Self::Plan => "plan",
            Self::Habits => "habits",
            Self::Rest => "rest",
            Self::Log => "log",
            Self::More => "more",
            Self::Settings => "settings",
            Self::Safety => "safety",
            Self::ThermometerCheck => "thermometer",
            Self::Cautions => "cautions",
            Self::AlarmsHere => "alarms",
            Self::Kitchen | Self::Reheat(Err(_)) => "kitchen",
            Self::Rub => "rub",
            Self::Portions => "portions",
            Self::Chill => "chill",
            Self::Bag(bag) => return format!("#bag-{}-{}", bag.count, bag.device.0),
            Self::Labels => "labels",
            Self::Reheat(Ok(card)) => return format!("#{}", card.fragment()),
        };
        format!("#{name}")
    }

    /// The screen at an address, if there is one.
    fn at(address: &str) -> Option<Self> {
        Some(match address.strip_prefix('#')? {
            "start" => Self::Start,
            "set-out" => Self::SetOut,
            "cook" => Self::Live,
            "pit" => Self::Pit,
            "round" => Self::Round,
            "curves" => Self::Curves,
            "plan" => Self::Plan,
            "habits" => Self::Habits,
            "rest" => Self::Rest,
            "log" => Self::Log,
            "more" => Self::More,
            "settings" => Self::Settings,
            "safety" => Self::Safety,
            "thermometer" => Self::ThermometerCheck,
            "cautions" => Self::Cautions,
            "alarms" => Self::AlarmsHere,
            "kitchen" => Self::Kitchen,
            "rub" => Self::Rub,
            "portions" => Self::Portions,
            "chill" => Self::Chill,
            "labels" => Self::Labels,
            other => return Self::with_a_number(other),
        })
    }

    /// The screen of one piece, one bag or one label.
    fn with_a_number(address: &str) -> Option<Self> {
        if let Some(piece) = address.strip_prefix("piece-") {
            return Some(Self::Piece(PieceId(piece.parse().ok()?)));
        }
        if let Some(bag) = address.strip_prefix("bag-") {
            let (count, device) = bag.split_once('-')?;
            let device = DeviceId(device.parse().ok()?);
            return Some(Self::Bag(EntryId { count: count.parse().ok()?, device }));
        }
        match Card::read(address) {
            Err(CardProblem::NotACard) => None,
            card => Some(Self::Reheat(card)),
        }
    }

    /// Whether it is one of the kitchen's, which works with no cook open.
    pub const fn is_kitchen(self) -> bool {
        matches!(
            self,
            Self::Kitchen
                | Self::Rub
                | Self::Portions
                | Self::Chill
                | Self::Bag(_)
                | Self::Labels
                | Self::Reheat(_)
        )
    }

    /// Whether it shows something of an open cook.
    pub const fn needs_a_cook(self) -> bool {
        matches!(
            self,
            Self::Live
                | Self::Plan
                | Self::Habits
                | Self::Piece(_)
                | Self::Pit
                | Self::Round
                | Self::Curves
                | Self::Rest
                | Self::Safety
                | Self::ThermometerCheck
                | Self::Log
        )
    }
}

/// The way from screen to screen.
#[derive(Clone, Copy)]
pub struct Navigation {
    screen: RwSignal<Screen>,
}

impl Navigation {
    /// Starts at the page's address and follows the phone's own back and forward.
    pub fn start() -> Self {
        let screen = RwSignal::new(here().unwrap_or(Screen::Start));
        let following = window_event_listener(ev::popstate, move |_| {
            screen.set(here().unwrap_or(Screen::Start));
        });
        on_cleanup(move || following.remove());
        Self { screen }
    }

    /// The screen that shows. Reactive.
    pub fn screen(self) -> Screen {
        self.screen.get()
    }

    /// The screen that shows, for use outside of what is drawn.
    pub fn screen_now(self) -> Screen {
        self.screen.get_untracked()
    }

    /// Whether the page's address names a screen.
    pub fn came_by_address(self) -> bool {
        here().is_some()
    }

    /// Goes to a screen, so that the phone's back returns to this one.
    pub fn go(self, to: Screen) {
        if self.screen.get_untracked() == to {
            return;
        }
        remember(to, false);
        self.screen.set(to);
    }

    /// Goes to a screen in place of this one: the phone's back skips this one.
    pub fn replace(self, with: Screen) {
        remember(with, true);
        self.screen.set(with);
    }
}

/// The navigation of this page.
pub fn navigation() -> Navigation {
    expect_context()
}

fn here() -> Option<Screen> {
    Screen::at(&window().location().hash().ok()?)
}

/// A browser that keeps no history still shows the screen.
fn remember(screen: Screen, in_place: bool) {
    let Ok(history) = window().history() else { return };
    let address = screen.address();
    let _ = if in_place {
        history.replace_state_with_url(&JsValue::NULL, "", Some(&address))
    } else {
        history.push_state_with_url(&JsValue::NULL, "", Some(&address))
    };
}
