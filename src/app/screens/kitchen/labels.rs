use cook_model::kitchen::label_sheet::{Sheet, Spot, fill};
use cook_model::quantity::{Length, Span};
use leptos::prelude::*;

use crate::derived::Derived;
use crate::device::print::print_page;
use crate::kitchen::{Count, Label, label_of, open_kitchen};
use crate::open_cook::open_cook;
use crate::parts::{Choice, Heading, If, SettingField};
use crate::say;
use crate::words::wording;

/// Bags packed within this are today's.
const TODAY: Span = Span::hours(18);
/// Height of a capital over the height of type: where the first line's foot stands.
const CAPITAL: f64 = 0.8;
/// The type size, in millimetres, of a label's number on the screen.
const NUMBER: f64 = 18.0;

/// The labels of the bags, laid out on a sheet to print.
#[component]
pub fn Labels() -> impl IntoView {
    let (kitchen, cook) = (open_kitchen(), open_cook());
    let sheet = RwSignal::new(Sheet::LetterThirty);
    let all = RwSignal::new(false);
    let gone = RwSignal::new(Count(0));
    let said = RwSignal::new(None::<String>);
    let labels = Derived::new(move || {
        let state = kitchen.state().read();
        let there = state.bags.iter().filter(|bag| bag.ended.is_none());
        let now = cook.now();
        let wanted = there.filter(|bag| all.get() || now - bag.stays[0].from < TODAY);
        wanted.filter_map(|bag| label_of(kitchen, bag)).collect::<Vec<_>>()
    });
    let pages = Derived::new(move || {
        sheet.get().lay_out(labels.read().len(), usize::from(gone.get().0)).ok()
    });
    let print = move |_| {
        if !print_page() {
            said.set(Some(say!("labels-no-print")));
        }
    };
    let sheets = vec![
        (Sheet::LetterThirty, wording("sheet-letter-thirty")),
        (Sheet::LetterTen, wording("sheet-letter-ten")),
        (Sheet::A4TwentyOne, wording("sheet-a4-twenty-one")),
        (Sheet::A4Fourteen, wording("sheet-a4-fourteen")),
    ];
    let which = vec![(false, wording("labels-today")), (true, wording("labels-all"))];
    let papers = move || {
        let labels = labels.get();
        let mut rest = (1..).zip(labels);
        let pages = pages.get()?.into_iter();
        let drawn = pages.map(|page| {
            let filled = page.into_iter().zip(rest.by_ref()).collect::<Vec<_>>();
            paper(sheet.get(), &filled)
        });
        Some(drawn.collect::<Vec<_>>())
    };
    let list = move || {
        let labels = labels.read();
        let row = |(number, label): (usize, &Label)| {
            view! { <li>{format!("{number}. {}", label.lines.join(" · "))}</li> }
        };
        (1..).zip(labels.iter()).map(row).collect_view()
    };
    view! {
        <section class="screen labels">
            <div class="screen on-screen">
                <Heading text=wording("labels-title") />
                <Choice
                    name="labels-which"
                    label=wording("labels-which")
                    options=which
                    chosen=all
                    on_choose=move |chosen| all.set(chosen)
                />
                <Choice
                    name="labels-sheet"
                    label=wording("labels-sheet")
                    options=sheets
                    chosen=sheet
                    on_choose=move |chosen| sheet.set(chosen)
                />
                <SettingField
                    name="labels-gone"
                    label=wording("labels-gone")
                    value=gone
                    limits=Count(0)..=Count(29)
                    on_set=move |typed| gone.set(typed)
                    hint=wording("labels-gone-hint")
                />
                <If
                    holds=move || !labels.read().is_empty()
                    otherwise=|| view! { <p class="lead">{wording("labels-none")}</p> }
                >
                    <If holds=move || pages.read().is_none()>
                        <p class="bad" role="alert">
                            {wording("labels-used-up")}
                        </p>
                    </If>
                    <button class="main-action" on:click=print>
                        {move || say!("labels-print", count = labels.read().len())}
                    </button>
                    <p class="hint">{move || print_hint(sheet.get())}</p>
                    <ul class="rows bag-list">{move || list()}</ul>
                </If>
                <p role="status">{move || said.get()}</p>
            </div>
            {move || papers()}
        </section>
    }
}

/// How to print so that each label is hit. Not every browser tells the printer which paper it is.
fn print_hint(sheet: Sheet) -> String {
    let paper = if is_letter(sheet) { say!("paper-letter") } else { say!("paper-a4") };
    say!("labels-print-hint", paper = paper)
}

const fn is_letter(sheet: Sheet) -> bool {
    matches!(sheet, Sheet::LetterThirty | Sheet::LetterTen)
}

/// One sheet of paper, drawn in millimetres; each label has its number in the list.
fn paper(sheet: Sheet, labels: &[(Spot, (usize, Label))]) -> impl IntoView + use<> {
    let [width, height] = sheet.page().map(Length::mm);
    let class = if is_letter(sheet) { "paper letter" } else { "paper a4" };
    let labels =
        labels.iter().map(|(spot, (number, label))| one_label(sheet, *spot, *number, label));
    view! {
        <div class=class>
            <svg viewBox=format!("0 0 {width} {height}") role="img" aria-label=say!("labels-sheet-drawn")>
                {labels.collect::<Vec<_>>()}
            </svg>
        </div>
    }
}

/// In print the label has its lines. They are too small to read on a phone, so there the label has
/// its number alone, large, and the list has the lines.
fn one_label(sheet: Sheet, spot: Spot, number: usize, label: &Label) -> impl IntoView + use<> {
    let modules = label.code.as_ref().map_or(1, |code| code.size);
    let filling = fill(sheet, &label.lines, modules);
    let [left, top] = [spot.left.mm(), spot.top.mm()];
    let code = label.code.clone().zip(filling.code).map(|(code, place)| {
        let side = code.size;
        view! {
            <svg
                x=left + place.left.mm()
                y=top + place.top.mm()
                width=place.width.mm()
                height=place.height.mm()
                viewBox=format!("0 0 {side} {side}")
            >
                <path class="modules" d=code.path />
            </svg>
        }
    });
    let [x, y] = [left + filling.text[0].mm(), top + filling.text[1].mm()];
    let (size, step) = (filling.type_size.mm(), filling.line.mm());
    let lines = label.lines.iter().enumerate().map(|(place, line)| {
        let foot = y + size * CAPITAL + step * place as f64;
        view! {
            <text class="line" x=x y=foot font-size=size>
                {line.clone()}
            </text>
        }
    });
    view! {
        <g class="one-label">
            <rect
                class="cut"
                x=left
                y=top
                width=spot.width.mm()
                height=spot.height.mm()
                rx="2"
            />
            {code}
            {lines.collect::<Vec<_>>()}
            <text
                class="number"
                x=x
                y=top + spot.height.mm() / 2.0
                font-size=NUMBER.min(spot.height.mm() * 0.6)
            >
                {number}
            </text>
        </g>
    }
}
