//! The touches Trunk does not give a site: the service worker with its list of files, and the check
//! that the page keeps to its own Content-Security-Policy.

use std::fs;
use std::path::Path;

use anyhow::{Context, Result, bail};

use crate::fingerprint::{files_in, of_bytes, relative};

/// The finished service worker, in the site's top folder so that it answers for all of it.
const WORKER: &str = "sw.js";

/// The service worker's source, in `public/`.
const TEMPLATE: &str = "service-worker.js";

/// Checks the site Trunk left in `site` and writes its service worker.
pub fn finish(public: &Path, site: &Path) -> Result<()> {
    let page = fs::read_to_string(site.join("index.html")).context("Trunk wrote no index.html")?;
    check_page(&page)?;
    let template = fs::read_to_string(public.join(TEMPLATE))
        .with_context(|| format!("public/{TEMPLATE} is missing"))?;
    let files = built_files(site)?;
    fs::write(site.join(WORKER), service_worker(&template, &files))?;
    Ok(())
}

/// A file of the site: its address relative to the page, and its SHA-256 sum.
#[derive(Debug, PartialEq)]
struct BuiltFile {
    address: String,
    sum: String,
}

/// Every file of the site but the service worker itself. The page's own address is `./`: some hosts
/// answer `index.html` by sending the browser there, which a service worker may not pass on.
fn built_files(site: &Path) -> Result<Vec<BuiltFile>> {
    let mut files = Vec::new();
    for file in files_in(site)? {
        let address = match relative(&file, site).as_str() {
            WORKER => continue,
            "index.html" => "./".to_owned(),
            other => other.to_owned(),
        };
        files.push(BuiltFile { address, sum: of_bytes(&fs::read(&file)?) });
    }
    Ok(files)
}

/// The template with two lines before it: the build's name, which is the sum of its files, and the
/// files. The same site gives the same text, and then a browser sees no new version.
fn service_worker(template: &str, files: &[BuiltFile]) -> String {
    let lines: Vec<_> =
        files.iter().map(|file| format!("  [{:?}, {:?}],\n", file.address, file.sum)).collect();
    let list = lines.concat();
    let build = &of_bytes(format!("{template}{list}").as_bytes())[..16];
    format!("const BUILD = {build:?};\nconst FILES = [\n{list}];\n\n{template}")
}

/// The page may hold no inline script or style: its policy forbids them, so the app would not start.
fn check_page(page: &str) -> Result<()> {
    if !page.contains("Content-Security-Policy") {
        bail!("index.html has lost its Content-Security-Policy");
    }
    for script in page.split("<script").skip(1) {
        let tag = script.split('>').next().unwrap_or_default();
        if !tag.contains(" src=") {
            bail!("index.html has an inline script, which its own policy forbids: <script{tag}>");
        }
    }
    if page.contains("<style") || page.contains(" style=") {
        bail!("index.html has an inline style, which its own policy forbids");
    }
    if page.contains("=\"/") {
        bail!("index.html has an address from the host's root; it must work in any sub-path");
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;

    const PAGE: &str = "<meta http-equiv=\"Content-Security-Policy\" content=\"x\">\
        <script type=\"module\" src=\"./start.js\"></script>";

    fn site() -> tempfile::TempDir {
        let folder = tempfile::tempdir().unwrap();
        let (public, site) = (folder.path().join("public"), folder.path().join("site"));
        fs::create_dir_all(site.join("icons")).unwrap();
        fs::create_dir_all(&public).unwrap();
        fs::write(public.join(TEMPLATE), "// the rest\n").unwrap();
        fs::write(site.join("index.html"), PAGE).unwrap();
        fs::write(site.join("app-1a.js"), "start()").unwrap();
        fs::write(site.join("icons/icon.svg"), "<svg/>").unwrap();
        folder
    }

    fn finished(folder: &Path) -> String {
        finish(&folder.join("public"), &folder.join("site")).unwrap();
        fs::read_to_string(folder.join("site").join(WORKER)).unwrap()
    }

    #[test]
    fn the_list_holds_every_file_but_the_worker() {
        let folder = site();
        finished(folder.path());
        let worker = finished(folder.path());
        let listed: Vec<_> = worker
            .lines()
            .filter_map(|line| line.strip_prefix("  [\"")?.split('"').next())
            .collect();
        assert_eq!(listed, ["app-1a.js", "icons/icon.svg", "./"]);
        assert!(worker.contains(&of_bytes(b"start()")));
        assert!(worker.ends_with("// the rest\n"));
    }

    #[test]
    fn the_same_site_gives_the_same_worker_and_any_change_another() {
        let folder = site();
        let first = finished(folder.path());
        assert_eq!(finished(folder.path()), first);
        fs::write(folder.path().join("site/icons/icon.svg"), "<svg />").unwrap();
        let changed = finished(folder.path());
        assert_ne!(changed.lines().next(), first.lines().next());
    }

    #[test]
    fn a_page_that_breaks_its_policy_is_refused() {
        assert!(check_page(PAGE).is_ok());
        let added = |more: &str| check_page(&format!("{PAGE}{more}"));
        assert!(added("<script type=\"module\">import x from './a.js'</script>").is_err());
        assert!(added("<p style=\"color: red\">").is_err());
        assert!(added("<link href=\"/app.css\">").is_err());
        assert!(check_page("<p>hello</p>").is_err());
    }
}
