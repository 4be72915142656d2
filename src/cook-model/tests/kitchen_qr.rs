//! A label's code, read back by a decoder that shares no code with the encoder (the `rqrr` crate).

use cook_model::kitchen::qr::qr_path;
use rqrr::PreparedImage;

/// Screen pixels to a module.
const SCALE: usize = 4;

/// Paints the path's rectangles, each `Mx yhWv1h-Wz`, on white.
fn paint(size: usize, path: &str) -> Vec<bool> {
    let mut dark = vec![false; size * size];
    for run in path.split('M').filter(|run| !run.is_empty()) {
        let (x, rest) = run.split_once(' ').expect("x y");
        let (y, rest) = rest.split_once('h').expect("y h");
        let (width, _) = rest.split_once('v').expect("h v");
        let [x, y, width] = [x, y, width].map(|n| n.parse::<usize>().expect("a number"));
        dark[y * size + x..][..width].fill(true);
    }
    dark
}

#[test]
fn another_decoder_reads_it() {
    for text in [
        "https://example.org/pull-order/#reheat-1.hpf.400.22.29678543.17-4021337",
        "https://example.org/#reheat-1.wvz.212.0.29678543.3-1",
    ] {
        let code = qr_path(text).unwrap();
        let size = usize::try_from(code.size).unwrap();
        let dark = paint(size, &code.path);
        let pixels = size * SCALE;
        let mut image = PreparedImage::prepare_from_greyscale(pixels, pixels, |x, y| {
            if dark[y / SCALE * size + x / SCALE] { 0 } else { 255 }
        });
        let grids = image.detect_grids();
        assert_eq!(grids.len(), 1, "one code");
        let (_, content) = grids[0].decode().unwrap();
        assert_eq!(content, text);
    }
}

#[test]
fn too_long_a_text_is_refused() {
    assert!(qr_path(&"x".repeat(2400)).is_err());
}
