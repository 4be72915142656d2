//! Which crate the program's bytes belong to, so that the next kilobyte has an owner. Read from the
//! compiler's own output, which still has the names of functions; wasm-opt makes it smaller by a fifth.

use std::collections::BTreeMap;
use std::fs;
use std::path::Path;

use anyhow::{Context, Result};
use wasmparser::{KnownCustom, Name, Parser, Payload, TypeRef};

/// As many crates are told; the others hardly count.
const TOLD: usize = 16;

/// Prints the share of each crate in the code of the module at `path`.
pub fn report(path: &Path) -> Result<()> {
    let module = fs::read(path).with_context(|| format!("cannot read {}", path.display()))?;
    let shares = of(&module)?;
    let all: usize = shares.iter().map(|(_, bytes)| bytes).sum();
    println!("{:>10} {:>6}  of the code, by the crate whose function it is", "raw", "%");
    for (owner, bytes) in shares.iter().take(TOLD) {
        println!("{bytes:>10} {:>6.1}  {owner}", 100.0 * *bytes as f64 / all as f64);
    }
    let rest: usize = shares.iter().skip(TOLD).map(|(_, bytes)| bytes).sum();
    println!("{rest:>10} {:>6.1}  all others", 100.0 * rest as f64 / all as f64);
    Ok(())
}

/// The bytes of code by crate, the largest first.
fn of(module: &[u8]) -> Result<Vec<(String, usize)>> {
    let (mut names, mut sizes) = (BTreeMap::new(), Vec::new());
    let mut imported = 0;
    for payload in Parser::new(0).parse_all(module) {
        match payload? {
            Payload::ImportSection(imports) => {
                for import in imports.into_imports() {
                    imported += u32::from(matches!(import?.ty, TypeRef::Func(_)));
                }
            }
            Payload::CodeSectionEntry(body) => sizes.push(body.as_bytes().len()),
            Payload::CustomSection(section) => {
                if let KnownCustom::Name(parts) = section.as_known() {
                    for part in parts {
                        let Name::Function(functions) = part? else { continue };
                        for function in functions {
                            let function = function?;
                            names.insert(function.index, function.name);
                        }
                    }
                }
            }
            _ => {}
        }
    }
    let mut shares: BTreeMap<String, usize> = BTreeMap::new();
    for (number, size) in (imported..).zip(sizes) {
        *shares.entry(owner(names.get(&number).copied().unwrap_or_default())).or_default() += size;
    }
    let mut shares: Vec<_> = shares.into_iter().collect();
    shares.sort_by_key(|(_, bytes)| std::cmp::Reverse(*bytes));
    Ok(shares)
}

/// The crate that a function's name begins with; of `<A as B>::f` it is A's.
fn owner(mangled: &str) -> String {
    let name = format!("{:#}", rustc_demangle::demangle(mangled));
    let path = name.trim_start_matches(['<', '&', '*', '(', '[', ' ']);
    let path =
        ["mut ", "dyn ", "const "].iter().fold(path, |path, word| path.trim_start_matches(word));
    match path.split_once("::") {
        Some((first, _)) if first.chars().all(|c| c.is_alphanumeric() || c == '_') => {
            first.to_owned()
        }
        _ => "of no crate".to_owned(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_function_belongs_to_the_crate_that_its_name_begins_with() {
        // Names as rustc 1.96 writes them, legacy and v0.
        assert_eq!(owner("_ZN10cook_model8forecast8forecast17h0123456789abcdefE"), "cook_model");
        assert_eq!(
            owner(
                "_ZN54_$LT$cook_model..Piece$u20$as$u20$core..fmt..Debug$GT$3fmt17h0123456789abcdefE"
            ),
            "cook_model"
        );
        assert_eq!(owner("_RNvCs1234_7mycrate3foo"), "mycrate");
        assert_eq!(owner("__wbindgen_malloc"), "of no crate");
    }

    #[test]
    fn the_bytes_of_a_module_are_counted_by_name() {
        // By the WebAssembly specification's binary format (sections 1, 3, 10 and the custom one "name"):
        // a module of one function, `() -> ()`, whose body is empty.
        let name = b"_ZN3abc3def17h0123456789abcdefE";
        let mut names = vec![4, b'n', b'a', b'm', b'e', 1];
        names.extend([name.len() as u8 + 3, 1, 0, name.len() as u8]);
        names.extend(name);
        let mut module =
            b"\0asm\x01\0\0\0\x01\x04\x01\x60\0\0\x03\x02\x01\0\x0a\x04\x01\x02\0\x0b".to_vec();
        module.extend([0, names.len() as u8]);
        module.extend(names);
        assert_eq!(of(&module).unwrap(), [("abc".to_owned(), 2)]);
    }
}
