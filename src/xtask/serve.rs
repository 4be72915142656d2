//! A plain server for the finished site, for this machine only. Each connection has a thread of its own
//! and one request, so that none waits for another: a browser that was killed or hangs holds up nobody.

use std::fs::File;
use std::io::{self, Read, Write};
use std::net::{TcpListener, TcpStream};
use std::path::{Component, Path, PathBuf};
use std::process::{Command, Stdio};
use std::thread;
use std::time::Duration;

use anyhow::{Context, Result};

/// How long a browser may take to ask, or to take what it asked for, until its connection is closed.
const PATIENCE: Duration = Duration::from_secs(60);
/// The longest head of a request; browsers send one or two kilobytes.
const LONGEST_HEAD: u64 = 64 << 10;

const NOT_FOUND: &[u8] = b"not found";

/// Serves `folder` at 127.0.0.1 until the process is ended. Each visit asks anew for every file,
/// so that a rebuilt site is seen at the next reload.
pub fn serve(folder: &Path, port: u16, open: bool) -> Result<()> {
    let listener = TcpListener::bind(("127.0.0.1", port))
        .with_context(|| format!("port {port} cannot be had; choose another by --port"))?;
    let address = format!("http://{}/", listener.local_addr()?);
    println!("Pull Order is at {address} (Ctrl-C ends it)");
    if open {
        open_in_browser(&address);
    }
    answer_all(folder, &listener);
    Ok(())
}

fn answer_all(folder: &Path, listener: &TcpListener) {
    // A connection that broke off before it was taken is no concern of the others.
    for stream in listener.incoming().flatten() {
        let folder = folder.to_owned();
        // Without a thread to be had, the browser is told by the closed connection.
        let _ = thread::Builder::new().spawn(move || answer(&folder, stream));
    }
}

fn answer(folder: &Path, mut stream: TcpStream) -> io::Result<()> {
    stream.set_read_timeout(Some(PATIENCE))?;
    stream.set_write_timeout(Some(PATIENCE))?;
    let head = read_head(&mut stream)?;
    let mut words = head.split(' ');
    let (method, url) = (words.next().unwrap_or_default(), words.next().unwrap_or_default());
    let path = file_for(folder, url).filter(|path| path.is_file());
    let (status, kind, length, mut body): (_, _, u64, Box<dyn Read>) = match (method, path) {
        ("GET" | "HEAD", Some(path)) => {
            let file = File::open(&path)?;
            ("200 OK", content_type(&path), file.metadata()?.len(), Box::new(file))
        }
        ("GET" | "HEAD", None) => {
            ("404 Not Found", "text/plain", NOT_FOUND.len() as u64, Box::new(NOT_FOUND))
        }
        _ => ("405 Method Not Allowed", "text/plain", 0, Box::new(io::empty())),
    };
    write!(
        stream,
        "HTTP/1.1 {status}\r\nContent-Type: {kind}\r\nContent-Length: {length}\r\n\
         Cache-Control: no-cache\r\nConnection: close\r\n\r\n"
    )?;
    if method != "HEAD" {
        io::copy(&mut body, &mut stream)?;
    }
    stream.flush()
}

/// The head of a request, up to its empty line (RFC 9112, 2.1).
fn read_head(stream: &mut TcpStream) -> io::Result<String> {
    let mut head = Vec::new();
    let mut bytes = stream.take(LONGEST_HEAD);
    let mut some = [0; 4096];
    while !head.windows(4).any(|end| end == b"\r\n\r\n") {
        let count = bytes.read(&mut some)?;
        if count == 0 {
            return Err(io::ErrorKind::UnexpectedEof.into());
        }
        head.extend_from_slice(&some[..count]);
    }
    Ok(String::from_utf8_lossy(&head).into_owned())
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
    use std::fs;
    use std::net::SocketAddr;

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

    /// A server of a folder with a page and a file too long for any connection to hold.
    fn serving() -> (tempfile::TempDir, SocketAddr) {
        let folder = tempfile::tempdir().unwrap();
        fs::write(folder.path().join("index.html"), "<p>hello</p>").unwrap();
        fs::write(folder.path().join("long.wasm"), vec![7; 64 << 20]).unwrap();
        let listener = TcpListener::bind("127.0.0.1:0").unwrap();
        let address = listener.local_addr().unwrap();
        let path = folder.path().to_owned();
        thread::spawn(move || answer_all(&path, &listener));
        (folder, address)
    }

    fn sent(address: SocketAddr, text: &str) -> TcpStream {
        let mut stream = TcpStream::connect(address).unwrap();
        stream.write_all(text.as_bytes()).unwrap();
        stream
    }

    fn asked(address: SocketAddr, line: &str) -> String {
        let mut text = String::new();
        sent(address, &format!("{line} HTTP/1.1\r\n\r\n")).read_to_string(&mut text).unwrap();
        text
    }

    #[test]
    fn the_page_is_served_with_its_type_and_the_rest_is_not_found() {
        let (_folder, address) = serving();
        for (line, status, part) in [
            ("GET /", "200", "Content-Type: text/html"),
            ("GET /none.js", "404", "not found"),
            ("GET /../secret", "404", "not found"),
            ("POST /", "405", ""),
        ] {
            let text = asked(address, line);
            assert!(text.contains(status) && text.contains(part), "{line}: {text}");
        }
        assert!(asked(address, "GET /").ends_with("<p>hello</p>"));
        assert!(asked(address, "HEAD /").contains("Content-Length: 12"));
        assert!(!asked(address, "HEAD /").contains("hello"));
    }

    #[test]
    fn a_hundred_connections_dropped_half_way_hold_up_nobody() {
        let (_folder, address) = serving();
        let mut held = Vec::new();
        for place in 0..100 {
            let text = match place % 4 {
                // Asked for nothing yet; broke off within its question; wants nothing of the answer.
                0 => "",
                1 => "GET /long.wasm HT",
                _ => "GET /long.wasm HTTP/1.1\r\n\r\n",
            };
            let mut stream = sent(address, text);
            if place % 4 == 3 {
                // The answer has begun when it goes.
                stream.read_exact(&mut [0; 9]).unwrap();
            } else {
                held.push(stream);
            }
        }
        for _ in 0..20 {
            assert!(asked(address, "GET /").ends_with("<p>hello</p>"));
        }
        drop(held);
        assert!(asked(address, "GET /").ends_with("<p>hello</p>"));
    }

    #[test]
    fn a_port_in_use_is_told_with_the_remedy() {
        let taken = TcpListener::bind("127.0.0.1:0").unwrap();
        let told = serve(Path::new("."), taken.local_addr().unwrap().port(), false).unwrap_err();
        assert!(format!("{told:#}").contains("--port"));
    }
}
