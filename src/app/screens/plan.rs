//! The day back from dinner.

use cook_model::cook::What;
use cook_model::cook::thinking::{Answer, Question};
use cook_model::forecast::Probability;
use cook_model::history::PieceHistory;
use cook_model::piece::PieceId;
use cook_model::plan::{Plan, PlanProblem, Style};
use cook_model::quantity::{Moment, Span};
use cook_model::sorting::sort_by_key;
use leptos::prelude::*;

use crate::derived::Derived;
use crate::navigate::{Screen, navigation};
use crate::open_cook::open_cook;
use crate::parts::{BackToCook, Choice, Heading, If, Timeline, Track, tracks};
use crate::screens::calendar_file::CalendarFile;
use crate::screens::plan_levers::Levers;
use crate::thought_out::thought_out;
use crate::words::wording;
use crate::{describe, say, show};

/// Pulls and rests nearer together than this are told in one line: they are one trip to the pit or to
/// the board (common practice, no source).
const TOGETHER: Span = Span::minutes(10);
/// A window shorter than this is told as one time.
const ONE_TIME: Span = Span::minutes(2);

/// The day back from dinner: its times, what it costs, and what could be done about it.
#[component]
pub fn PlanScreen() -> impl IntoView {
    let cook = open_cook();
    let navigation = navigation();
    let asked = move || {
        let wanted = cook.state().read().plan_request(cook.now()).is_some();
        (wanted && cook.plan().read().is_none()).then_some(Question::WhyNoPlan)
    };
    let why = thought_out(asked);
    let problem = Derived::new(move || {
        let state = cook.state().read();
        if state.pieces.is_empty() {
            return Some(say!("plan-no-pieces"));
        }
        if state.plan_request(cook.now()).is_none() {
            return Some(say!("plan-no-dinner"));
        }
        match why.get() {
            Some(Answer::WhyNoPlan(problem)) => problem.map(in_words),
            _ => None,
        }
    });
    view! {
        <section class="screen plan">
            <div class="top">
                <BackToCook />
                <Heading text=wording("plan-title") />
            </div>
            {move || match problem.get() {
                Some(words) => {
                    view! {
                        <p class="lead">{words}</p>
                        <button
                            class="main-action"
                            on:click=move |_| navigation.go(Screen::SetOut)
                        >
                            {say!("more-set-out")}
                        </button>
                    }
                        .into_any()
                }
                None => view! { <ThePlan /> }.into_any(),
            }}
            <button class="row" on:click=move |_| navigation.go(Screen::Habits)>
                {wording("habits-title")}
            </button>
        </section>
    }
}

fn in_words(problem: PlanProblem) -> String {
    match problem {
        PlanProblem::DinnerPast => say!("plan-dinner-past"),
        PlanProblem::NeverDone => say!("plan-never-done"),
        _ => say!("plan-no-pieces"),
    }
}

/// A plan that could be made.
#[component]
fn ThePlan() -> impl IntoView {
    let cook = open_cook();
    let drawn = move || {
        let plan = cook.plan().get()?;
        let tracks = tracks(&cook.state().read(), &cook.forecast().read(), &plan);
        let now = cook.now();
        Some(view! {
            <figure class="curve">
                <Timeline tracks=tracks light=plan.light dinner=plan.dinner now=now />
                <figcaption>{say!("plan-legend")}</figcaption>
            </figure>
        })
    };
    let steps = move || {
        let plan = cook.plan().get()?;
        let tracks = tracks(&cook.state().read(), &cook.forecast().read(), &plan);
        let rows = times(&plan, &tracks).into_iter().map(|(at, what)| {
            view! {
                <li>
                    <strong class="time">{show::clock(at)}</strong>
                    <span class="facts">{what}</span>
                </li>
            }
        });
        Some(view! { <ol class="entries">{rows.collect_view()}</ol> })
    };
    // What was planned before the last tap is not shown as if it held still; it keeps its room.
    let is_stale = Derived::new(move || {
        cook.has_unwritten() || cook.is_thinking() || !cook.seen().read().is_of(&cook.log().read())
    });
    view! {
        <p class="lead working" role="status">
            {move || is_stale.get().then(|| say!("live-thinking"))}
        </p>
        <div class="sides" class:stale=move || is_stale.get()>
            <div class="side">{move || drawn()} <Levers /> <Ways /></div>
            <div class="side">{move || steps()} <CalendarFile /></div>
        </div>
    }
}

/// What the plan says, in order of time: the whole drawing in words, and what it cannot show.
fn times(plan: &Plan, tracks: &[Track]) -> Vec<(Moment, String)> {
    let state = open_cook().state();
    let state = state.read();
    let names = |group: &[&Track]| {
        let mut pieces: Vec<PieceId> = group.iter().map(|track| track.piece).collect();
        sort_by_key(&mut pieces, |piece| *piece);
        show::the_pieces(&state, &pieces)
    };
    let mut times = vec![(plan.dinner, say!("plan-eat"))];
    if state.began.is_none() {
        times.push((plan.season, say!("do-season")));
        times.push((plan.light, describe::light_fire(state.settings.pit_kind)));
    }
    let trays = plan.trays(|planned| {
        state.history.piece(planned.piece).is_some_and(PieceHistory::was_never_out)
    });
    times.extend(
        trays.into_iter().map(|(at, pieces)| {
            (at, say!("do-take-out", pieces = show::the_pieces(&state, &pieces)))
        }),
    );
    let now = cook_now();
    times.extend(
        plan.feeds.iter().filter(|feed| **feed > now).map(|feed| (*feed, say!("do-feed-fire"))),
    );
    // Those that go on within one minute go on together.
    times.extend(
        groups(tracks, |track| track.on, Span::minutes(1))
            .into_iter()
            .map(|group| (group[0].on, say!("plan-on", piece = names(&group)))),
    );
    times.extend(groups(tracks, |track| track.pull.0, TOGETHER).into_iter().map(|group| {
        let low = group[0].pull.0;
        let high = group.iter().map(|track| track.pull.1).fold(low, Moment::max);
        let window =
            if high - low < ONE_TIME { show::clock(low) } else { show::clock_range(low, high) };
        (low, say!("plan-pull", piece = names(&group), window = window))
    }));
    times.extend(groups(tracks, |track| track.rested, TOGETHER).into_iter().map(|group| {
        // All of them have by the last one's time.
        let rested = group[group.len() - 1].rested;
        (rested, say!("plan-rested", count = group.len(), piece = names(&group)))
    }));
    sort_by_key(&mut times, |(at, _)| *at);
    times
}

/// The tracks in order of a time of theirs, those within a span of the first of them together.
fn groups(tracks: &[Track], time: fn(&Track) -> Moment, within: Span) -> Vec<Vec<&Track>> {
    let mut in_order: Vec<&Track> = tracks.iter().collect();
    sort_by_key(&mut in_order, |track| (time(track), track.piece));
    let mut groups: Vec<Vec<&Track>> = Vec::new();
    for track in in_order {
        match groups.last_mut() {
            Some(group) if time(track) - time(group[0]) < within => group.push(track),
            _ => groups.push(vec![track]),
        }
    }
    groups
}

fn cook_now() -> Moment {
    open_cook().now()
}

/// The two ways to load the pit, with what each costs.
#[component]
fn Ways() -> impl IntoView {
    let cook = open_cook();
    let begun = move || cook.state().read().history.pieces.iter().any(|p| !p.spells.is_empty());
    let costs = thought_out(move || (!begun()).then_some(Question::Ways));
    let cost = move |way: usize| {
        let Some(Answer::Ways(costs)) = costs.get() else { return None };
        let plan = costs[way].as_ref()?;
        Some(say!(
            "plan-cost",
            held = show::span(plan.held),
            openings = plan.openings,
            fuel = show::span(plan.fuel),
            chance = percent(plan.in_time)
        ))
    };
    view! {
        <If holds=move || !begun()>
            <Choice
                name="style"
                label=wording("plan-style")
                options=vec![
                    (Style::OnTogether, wording("plan-on-together")),
                    (Style::OffTogether, wording("plan-off-together")),
                ]
                chosen=move || cook.facts().read().settings.style
                on_choose=move |style| cook.record(What::StyleSet { style })
            />
            <dl class="costs">
                <dt>{wording("plan-on-together")}</dt>
                <dd>{move || cost(0)}</dd>
                <dt>{wording("plan-off-together")}</dt>
                <dd>{move || cost(1)}</dd>
            </dl>
        </If>
    }
}

/// A chance as a whole percentage.
pub fn percent(chance: Probability) -> String {
    format!("{}%", (chance.value() * 100.0).round())
}
