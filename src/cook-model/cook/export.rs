//! A cook as one file ([`mod@crate::file`]); its entries are told at [`What`](super::What).

use super::Log;
use crate::file;
pub use crate::file::ImportProblem;

/// What the `format` field says.
const FORMAT: &str = "pull-order cook";

/// The file's text.
pub fn export(log: &Log) -> String {
    file::export(FORMAT, log)
}

/// Reads a file's text.
///
/// # Errors
/// [`ImportProblem`] says why the whole file was refused.
pub fn import(text: &str) -> Result<Log, ImportProblem> {
    file::import(FORMAT, text)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::file::{LONGEST, MOST_ENTRIES};

    #[test]
    fn refuses_what_is_no_cook_and_says_why() {
        let cases = [
            ("", "no such file"),
            ("{}", "no such file"),
            ("[1, 2]", "no such file"),
            (r#"{"format":"other","version":1,"entries":[]}"#, "no such file"),
            (r#"{"format":"pull-order cook","version":2,"entries":7}"#, "later version"),
        ];
        for (text, words) in cases {
            let problem = import(text).unwrap_err().to_string();
            assert!(problem.contains(words), "{problem} for {text}");
        }
        assert_eq!(import(&" ".repeat(LONGEST + 1)), Err(ImportProblem::TooLong));
        let many = vec!["1"; MOST_ENTRIES + 1].join(",");
        let many = format!(r#"{{"format":"{FORMAT}","version":1,"entries":[{many}]}}"#);
        assert_eq!(import(&many), Err(ImportProblem::TooMany));
    }

    #[test]
    fn keeps_what_it_cannot_read() {
        let text = format!(
            r#"{{"format":"{FORMAT}","version":1,"entries":[{{"v":9}}],"set_aside":[{{"text":"ink","why":"blot"}}]}}"#
        );
        let log = import(&text).unwrap();
        let kept: Vec<&str> = log.set_aside().iter().map(|aside| aside.text.as_str()).collect();
        assert_eq!(kept, [r#"{"v":9}"#, "ink"]);
        assert_eq!(import(&export(&log)).unwrap(), log);
    }
}
