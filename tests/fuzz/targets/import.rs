//! Any bytes as a cook's file: it is refused with a reason, or what it holds is kept whole.
#![no_main]

use cook_model::cook::export::{export, import};
use cook_model::cook::fold;
use libfuzzer_sys::fuzz_target;

fuzz_target!(|bytes: &[u8]| {
    let Ok(text) = std::str::from_utf8(bytes) else { return };
    match import(text) {
        Err(problem) => assert!(!problem.to_string().is_empty()),
        Ok(log) => {
            fold(&log);
            let again = import(&export(&log)).expect("what was written is read");
            assert_eq!(again.entries(), log.entries());
            let mut before: Vec<&str> = log.set_aside().iter().map(|a| a.text.as_str()).collect();
            let mut after: Vec<&str> = again.set_aside().iter().map(|a| a.text.as_str()).collect();
            before.sort_unstable();
            after.sort_unstable();
            assert_eq!(before, after, "what was set aside is kept");
        }
    }
});
