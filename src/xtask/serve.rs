//! A plain server for the finished site, for this machine only.

use std::fs;
use std::path::{Component, Path, PathBuf};
use std::process::{Command, Stdio};

use anyhow::{Context, Result, anyhow};
use tiny_http::{Header, Method, Request, Response, Server};

/// Serves `folder` at 127.0.0.1 until the process is ended. Each visit asks anew for every file,
/// so that a rebuilt site is seen at the next reload.
pub fn serve(folder: &Path, port: u16, open: bool) -> Result<()> {
    let server = Server::http(("127.0.0.1", port))
        .map_err(|reason| anyhow!("{reason}"))
        .with_context(|| format!("port {port} cannot be had; choose another by --port"))?;
    let port = server.server_addr().to_ip().map_or(port, |address| address.port());
    let address = format!("http://127.0.0.1:{port}/");
    println!("Pull Order is at {address} (Ctrl-C ends it)");
    if open {
        open_in_browser(&address);
    }
    for request in server.incoming_requests() {
        // A browser that hangs up in the middle of an answer is no concern of the server.
        let _ = answer(folder, request);
    }
    Ok(())
}

fn answer(folder: &Path, request: Request) -> Result<()> {
    if !matches!(request.method(), Method::Get | Method::Head) {
        return Ok(request.respond(Response::empty(405))?);
    }
    let found =
        file_for(folder, request.url()).and_then(|file| Some((fs::read(&file).ok()?, file)));
    match found {
        Some((bytes, file)) => {
            let mut response = Response::from_data(bytes);
            response.add_header(header("Content-Type", content_type(&file)));
            response.add_header(header("Cache-Control", "no-cache"));
            Ok(request.respond(response)?)
        }
        None => Ok(request.respond(Response::from_string("not found").with_status_code(404))?),
    }
}

/// The file an address stands for. Addresses that lead out of the folder stand for none.
fn file_for(folder: &Path, url: &str) -> Option<PathBuf> {
    let path = url.split(['?', '#']).next()?.trim_start_matches('/');
    let inside = Path::new(path);
    if !inside.components().all(|part| matches!(part, Component::Normal(_))) {
        return None;
    }
    let file = folder.join(inside);
    Some(if path.is_empty() || file.is_dir() { file.join("index.html") } else { file })
}

fn content_type(file: &Path) -> &'static str {
    match file.extension().and_then(|extension| extension.to_str()) {
        Some("html") => "text/html; charset=utf-8",
        Some("js") => "text/javascript; charset=utf-8",
        Some("css") => "text/css; charset=utf-8",
        Some("wasm") => "application/wasm",
        Some("webmanifest") => "application/manifest+json",
        Some("json") => "application/json",
        Some("svg") => "image/svg+xml",
        Some("png") => "image/png",
        Some("ftl" | "txt") => "text/plain; charset=utf-8",
        _ => "application/octet-stream",
    }
}

fn header(name: &str, value: &str) -> Header {
    Header::from_bytes(name, value).expect("the server's own headers are plain ASCII")
}

fn open_in_browser(address: &str) {
    let program = if cfg!(target_os = "macos") { "open" } else { "xdg-open" };
    let opened =
        Command::new(program).arg(address).stdout(Stdio::null()).stderr(Stdio::null()).spawn();
    if opened.is_err() {
        println!("    no browser could be opened; the address is above");
    }
}

#[cfg(test)]
mod tests {
    use std::io::{Read, Write};
    use std::net::TcpStream;
    use std::thread;

    use super::*;

    #[test]
    fn an_address_is_a_file_in_the_folder_or_nothing() {
        let folder = tempfile::tempdir().unwrap();
        let inside = |url: &str| file_for(folder.path(), url);
        assert_eq!(inside("/"), Some(folder.path().join("index.html")));
        assert_eq!(inside("/a/b.js?v=1#x"), Some(folder.path().join("a/b.js")));
        assert_eq!(inside("/../secret"), None);
        assert_eq!(inside("/a/../../secret"), None);
    }

    #[test]
    fn the_page_is_served_with_its_type_and_the_rest_is_not_found() {
        let folder = tempfile::tempdir().unwrap();
        fs::write(folder.path().join("index.html"), "<p>hello</p>").unwrap();
        let server = Server::http("127.0.0.1:0").unwrap();
        let address = server.server_addr().to_ip().unwrap();
        let asked = |line: &'static str| {
            thread::spawn(move || {
                let mut stream = TcpStream::connect(address).unwrap();
                write!(stream, "{line} HTTP/1.0\r\n\r\n").unwrap();
                let mut text = String::new();
                stream.read_to_string(&mut text).unwrap();
                text
            })
        };
        for (line, status, part) in [
            ("GET /", "200", "Content-Type: text/html"),
            ("GET /none.js", "404", "not found"),
            ("POST /", "405", ""),
        ] {
            let reading = asked(line);
            answer(folder.path(), server.recv().unwrap()).unwrap();
            let text = reading.join().unwrap();
            assert!(text.contains(status) && text.contains(part), "{line}: {text}");
        }
    }

    #[test]
    fn a_port_in_use_is_told_with_the_remedy() {
        let taken = Server::http("127.0.0.1:0").unwrap();
        let port = taken.server_addr().to_ip().unwrap().port();
        let told = serve(Path::new("."), port, false).unwrap_err();
        assert!(format!("{told:#}").contains("--port"));
    }
}
