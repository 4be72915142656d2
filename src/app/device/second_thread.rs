//! A second thread of the same program (`public/think.js`), so that what takes long to work out holds up
//! no finger.

use js_sys::{Array, Uint8Array};
use leptos::prelude::document;
use wasm_bindgen::JsCast;
use wasm_bindgen::prelude::Closure;
use web_sys::{Event, MessageEvent, Worker, WorkerOptions, WorkerType};

/// The second thread; it ends when this is dropped.
pub struct SecondThread {
    worker: Worker,
    _heard: Closure<dyn Fn(MessageEvent)>,
    _ended: Closure<dyn Fn(Event)>,
}

impl SecondThread {
    /// Starts it, and calls `heard` with each answer, or with none when the thread can go on no more. None
    /// where the browser refuses.
    pub fn start(heard: impl Fn(Option<Vec<u8>>) + Clone + 'static) -> Option<Self> {
        let options = WorkerOptions::new();
        options.set_type(WorkerType::Module);
        let worker = Worker::new_with_options("think.js", &options).ok()?;
        let ended = heard.clone();
        let heard = Closure::<dyn Fn(MessageEvent)>::new(move |event: MessageEvent| {
            heard(event.data().dyn_into().ok().map(|bytes: Uint8Array| bytes.to_vec()));
        });
        let ended = Closure::<dyn Fn(Event)>::new(move |event: Event| {
            event.prevent_default();
            ended(None);
        });
        worker.set_onmessage(Some(heard.as_ref().unchecked_ref()));
        worker.set_onerror(Some(ended.as_ref().unchecked_ref()));
        let thread = Self { worker, _heard: heard, _ended: ended };
        // The program is handed over compiled, and with the name that the build gave it.
        let program = Array::of2(&wasm_bindgen::module(), &glue()?.into());
        thread.worker.post_message(&program).ok()?;
        Some(thread)
    }

    /// Asks it; false if the browser refuses.
    pub fn ask(&self, question: &[u8]) -> bool {
        self.worker.post_message(&Uint8Array::from(question)).is_ok()
    }
}

impl Drop for SecondThread {
    fn drop(&mut self) {
        self.worker.set_onmessage(None);
        self.worker.set_onerror(None);
        self.worker.terminate();
    }
}

/// The address of the script that starts the program, as the page's own start has it.
fn glue() -> Option<String> {
    document().query_selector("script[data-js]").ok()??.get_attribute("data-js")
}
