//! The screen of what alarms can do on this phone, which differs by phone and browser.

use leptos::prelude::*;
use leptos::task::spawn_local;

use crate::device::alarm_test::{self, Report};
use crate::device::notify::{self, Buttons, Notice, Permission};
use crate::device::sound::{self, Tune};
use crate::device::{feature, wake_lock};
use crate::getter::Getter;
use crate::open_cook::open_cook;
use crate::parts::{Choice, Heading, If};
use crate::screens::calendar_file::CalendarFile;
use crate::screens::spoken_calls::SpokenCalls;
use crate::words::{Words, wording};
use crate::{preferences, say};

/// What alarms do on this phone, and the trial that proves it.
#[component]
pub fn AlarmsHere() -> impl IntoView {
    let cook = open_cook();
    let permission = RwSignal::new(notify::permission());
    view! {
        <section class="screen alarms-here">
            <Heading text=wording("alarms-title") />
            <Trial permission=permission />
            <p>{wording("alarms-lead")}</p>
            <p>{wording("alarms-backup")}</p>
            <If holds=move || cook.plan().read().is_some()>
                <CalendarFile />
            </If>
            <NotificationsHere permission=permission />
            <p>
                {move || {
                    if wake_lock::is_offered() { say!("alarms-awake") } else { say!("alarms-not-awake") }
                }}
            </p>
            <If holds=|| !feature::is_installed()>
                <p>{wording("alarms-install")}</p>
            </If>
            <OnOff
                name="sound"
                label=wording("alarms-sound")
                chosen=|| preferences::current().sound
                on_choose=|on| {
                    sound::unlock();
                    if on {
                        // To hear at once that there is sound.
                        sound::play(Tune::Note);
                    }
                    preferences::change(|chosen| chosen.sound = on);
                }
            />
            <SpokenCalls />
            <OnOff
                name="awake"
                label=wording("alarms-stay-awake")
                chosen=|| preferences::current().stay_awake
                on_choose=|on| preferences::change(|chosen| chosen.stay_awake = on)
            />
        </section>
    }
}

/// What this phone does about notifications. They are asked for here, where their use is plain.
#[component]
fn NotificationsHere(permission: RwSignal<Permission>) -> impl IntoView {
    let ask = move |_| {
        spawn_local(async move { permission.set(notify::ask().await) });
    };
    let words = move || match permission.get() {
        Permission::NotOffered => say!("alarms-notify-not-offered"),
        Permission::NotAsked if notify::have_buttons() => say!("alarms-notify-buttons"),
        Permission::NotAsked => say!("alarms-notify-not-asked"),
        Permission::Granted => say!("alarms-notify-granted"),
        Permission::Refused => say!("alarms-notify-refused"),
    };
    view! {
        <p>{move || words()}</p>
        <If holds=move || permission.get() == Permission::NotAsked>
            <button class="second-action" on:click=ask>
                {wording("alarms-notify-ask")}
            </button>
        </If>
    }
}

/// The trial: one tap, and within ten seconds what worked.
#[component]
fn Trial(permission: RwSignal<Permission>) -> impl IntoView {
    let report: RwSignal<Option<Report>> = RwSignal::new(None);
    let running = RwSignal::new(false);
    let run = move |_| {
        if running.get_untracked() {
            return;
        }
        running.set(true);
        report.set(None);
        let trying = alarm_test::run(trial_notice());
        spawn_local(async move {
            let result = trying.await;
            permission.set(result.permission);
            report.set(Some(result));
            running.set(false);
        });
    };
    view! {
        <button class="main-action" on:click=run>
            {move || if running.get() { say!("alarms-trying") } else { say!("alarms-try") }}
        </button>
        <div role="status">
            {move || report.get().map(|report| view! { <ReportRows report=report /> })}
        </div>
    }
}

#[component]
fn ReportRows(report: Report) -> impl IntoView {
    let row = |works: bool, yes: String, no: String| {
        let mark = if works { "✓" } else { "✗" };
        view! {
            <li class:works=works>
                <span aria-hidden="true">{mark}</span>
                " "
                {if works { yes } else { no }}
            </li>
        }
    };
    view! {
        <ul class="report">
            {row(report.sound, say!("tried-sound"), say!("tried-no-sound"))}
            {row(report.vibration, say!("tried-vibration"), say!("tried-no-vibration"))}
            {row(report.notification, say!("tried-notification"), say!("tried-no-notification"))}
            {row(report.awake, say!("tried-awake"), say!("tried-not-awake"))}
            {row(report.kept, say!("tried-kept"), say!("tried-not-kept"))}
            {row(report.installed, say!("tried-installed"), say!("tried-not-installed"))}
        </ul>
    }
}

fn trial_notice() -> Notice {
    Notice {
        title: say!("alarms-trial-title"),
        body: say!("alarms-trial-body"),
        tag: "trial".to_owned(),
        buttons: Buttons { snooze: say!("alarms-trial-snooze"), done: say!("alarms-trial-done") },
    }
}

/// On or off.
#[component]
pub fn OnOff(
    /// Names the group on the page.
    name: &'static str,
    /// What is on or off.
    label: Words,
    /// Whether it is on.
    #[prop(into)]
    chosen: Getter<bool>,
    /// Called with another choice.
    on_choose: impl Fn(bool) + Send + Sync + 'static,
) -> impl IntoView {
    view! {
        <Choice
            name=name
            label=label
            options=vec![
                (true, wording("on")),
                (false, wording("off")),
            ]
            chosen=chosen
            on_choose=on_choose
        />
    }
}
