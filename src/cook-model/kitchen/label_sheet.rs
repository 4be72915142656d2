//! Sheets of sticky labels: where each one lies, for printing.

use thiserror::Error;

use crate::quantity::Length;

/// A rectangle on a page, from its upper left corner.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Spot {
    /// From the left edge of the page.
    pub left: Length,
    /// From the upper edge of the page.
    pub top: Length,
    /// How wide.
    pub width: Length,
    /// How high.
    pub height: Length,
}

/// A sheet of labels sold everywhere, by the size of its labels.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Sheet {
    /// US letter, 30 labels of 2 5/8 by 1 inch.
    #[default]
    LetterThirty,
    /// US letter, 10 labels of 4 by 2 inches.
    LetterTen,
    /// A4, 21 labels of 63.5 by 38.1 mm.
    A4TwentyOne,
    /// A4, 14 labels of 99.1 by 38.1 mm.
    A4Fourteen,
}

/// A sheet's measures, mm (the makers' common templates, from memory).
struct Measures {
    page: [f64; 2],
    label: [f64; 2],
    first: [f64; 2],
    pitch: [f64; 2],
    columns: usize,
    rows: usize,
}

const INCH: f64 = 25.4;

impl Sheet {
    /// All sheets, in the order they are offered.
    pub const ALL: [Self; 4] =
        [Self::LetterThirty, Self::LetterTen, Self::A4TwentyOne, Self::A4Fourteen];

    const fn measures(self) -> Measures {
        match self {
            Self::LetterThirty => Measures {
                page: [8.5 * INCH, 11.0 * INCH],
                label: [2.625 * INCH, INCH],
                first: [0.1875 * INCH, 0.5 * INCH],
                pitch: [2.75 * INCH, INCH],
                columns: 3,
                rows: 10,
            },
            Self::LetterTen => Measures {
                page: [8.5 * INCH, 11.0 * INCH],
                label: [4.0 * INCH, 2.0 * INCH],
                first: [0.15625 * INCH, 0.5 * INCH],
                pitch: [4.1875 * INCH, 2.0 * INCH],
                columns: 2,
                rows: 5,
            },
            Self::A4TwentyOne => Measures {
                page: [210.0, 297.0],
                label: [63.5, 38.1],
                first: [7.25, 15.15],
                pitch: [66.0, 38.1],
                columns: 3,
                rows: 7,
            },
            Self::A4Fourteen => Measures {
                page: [210.0, 297.0],
                label: [99.1, 38.1],
                first: [4.65, 15.15],
                pitch: [101.6, 38.1],
                columns: 2,
                rows: 7,
            },
        }
    }

    /// Width and height of the page.
    pub const fn page(self) -> [Length; 2] {
        let [width, height] = self.measures().page;
        [Length::from_mm(width), Length::from_mm(height)]
    }

    /// Width and height of one label.
    pub const fn label(self) -> [Length; 2] {
        let [width, height] = self.measures().label;
        [Length::from_mm(width), Length::from_mm(height)]
    }

    /// Labels on a sheet.
    pub const fn count(self) -> usize {
        let measures = self.measures();
        measures.columns * measures.rows
    }

    /// Where each of `labels` labels lies, page by page, row by row. A sheet begun before is used
    /// up first: `used` labels are gone from its top.
    ///
    /// # Errors
    /// [`SheetUsedUp`] where more are said to be gone than the sheet has.
    pub fn lay_out(self, labels: usize, used: usize) -> Result<Vec<Vec<Spot>>, SheetUsedUp> {
        if used >= self.count() {
            return Err(SheetUsedUp);
        }
        let places: Vec<usize> = (used..used + labels).collect();
        let mut pages = Vec::new();
        for place in places {
            let page = place / self.count();
            if page == pages.len() {
                pages.push(Vec::new());
            }
            pages[page].push(self.spot(place % self.count()));
        }
        Ok(pages)
    }

    fn spot(self, place: usize) -> Spot {
        let measures = self.measures();
        let [column, row] = [place % measures.columns, place / measures.columns];
        Spot {
            left: Length::from_mm(measures.first[0] + measures.pitch[0] * column as f64),
            top: Length::from_mm(measures.first[1] + measures.pitch[1] * row as f64),
            width: Length::from_mm(measures.label[0]),
            height: Length::from_mm(measures.label[1]),
        }
    }
}

/// No label is left on the sheet that was begun.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Error)]
#[error("no label is left on that sheet; say fewer, or 0 for a new sheet")]
pub struct SheetUsedUp;

/// Clear paper kept round what is printed, so that a printer a little off still hits the label.
const PADDING: Length = Length::from_mm(2.5);
/// A code larger than this reads no better.
const LARGEST_CODE: Length = Length::from_mm(30.0);
/// The smallest module an ordinary phone reads from an ordinary printer (common practice, no
/// source).
const SMALLEST_MODULE: Length = Length::from_mm(0.33);
/// Type no smaller than about 6 points is read without glasses by most (common practice, no
/// source), and no larger than 4 mm is needed.
const SMALLEST_TYPE: Length = Length::from_mm(2.1);
const LARGEST_TYPE: Length = Length::from_mm(4.0);
/// Height of a line of type over the type's own.
const LEADING: f64 = 1.25;
/// Width of a letter over the height of its type, wide words of a sans-serif.
const LETTER: f64 = 0.55;

/// How one label is filled: its code on the left, its lines on the right.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Filling {
    /// The square for the code, from the label's own upper left corner; none where a code of so
    /// many modules would be too small to read there.
    pub code: Option<Spot>,
    /// Where the first line starts, from the label's own left edge and upper edge.
    pub text: [Length; 2],
    /// Height of the type.
    pub type_size: Length,
    /// From line to line.
    pub line: Length,
}

/// Fits lines of text and a code of `modules` modules a side into one label of a sheet. The type
/// shrinks to fit the longest line, though not below what can be read: then the line is cut by
/// the label's edge.
pub fn fill(sheet: Sheet, lines: &[String], modules: u32) -> Filling {
    let [width, height] = sheet.label();
    let room = height - PADDING * 2.0;
    // No more than two fifths of the width: the lines are to be read by people.
    let side = Length::from_mm(room.mm().min(LARGEST_CODE.mm()).min(0.4 * width.mm()));
    let readable = side.mm() / f64::from(modules.max(1)) >= SMALLEST_MODULE.mm();
    let code = readable.then(|| Spot {
        left: PADDING,
        top: (height - side) * 0.5,
        width: side,
        height: side,
    });
    let left = if readable { PADDING * 2.0 + side } else { PADDING };
    let longest = lines.iter().map(|line| line.chars().count()).max().unwrap_or(0).max(1);
    let by_width = (width - PADDING - left).mm() / (LETTER * longest as f64);
    let by_height = room.mm() / (LEADING * lines.len().max(1) as f64);
    let size = by_width.min(by_height).clamp(SMALLEST_TYPE.mm(), LARGEST_TYPE.mm());
    let line = Length::from_mm(size * LEADING);
    let above = (height - line * lines.len() as f64) * 0.5;
    let top = if above > PADDING { above } else { PADDING };
    Filling { code, text: [left, top], type_size: Length::from_mm(size), line }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn apart(a: &Spot, b: &Spot) -> bool {
        let right = |s: &Spot| s.left.mm() + s.width.mm();
        let bottom = |s: &Spot| s.top.mm() + s.height.mm();
        let slack = 1e-9;
        right(a) <= b.left.mm() + slack
            || right(b) <= a.left.mm() + slack
            || bottom(a) <= b.top.mm() + slack
            || bottom(b) <= a.top.mm() + slack
    }

    #[test]
    fn labels_lie_on_the_page_and_not_on_each_other() {
        for sheet in Sheet::ALL {
            let pages = sheet.lay_out(sheet.count(), 0).unwrap();
            let [page] = &pages[..] else { panic!("one page") };
            let [width, height] = sheet.page();
            for (i, spot) in page.iter().enumerate() {
                assert!(spot.left.mm() + spot.width.mm() <= width.mm(), "{sheet:?} {i}");
                assert!(spot.top.mm() + spot.height.mm() <= height.mm(), "{sheet:?} {i}");
                assert!(page[..i].iter().all(|other| apart(spot, other)), "{sheet:?} {i}");
            }
            // The sheet is the same from both sides: a template mistyped would show.
            let last = page[page.len() - 1];
            let right = width.mm() - last.left.mm() - last.width.mm();
            let bottom = height.mm() - last.top.mm() - last.height.mm();
            assert!((right - page[0].left.mm()).abs() < 0.05, "{sheet:?}: {right}");
            assert!((bottom - page[0].top.mm()).abs() < 0.05, "{sheet:?}: {bottom}");
        }
    }

    #[test]
    fn a_begun_sheet_is_used_up() {
        let sheet = Sheet::LetterTen;
        let pages = sheet.lay_out(12, 7).unwrap();
        assert_eq!(pages.iter().map(Vec::len).collect::<Vec<_>>(), [3, 9]);
        assert!(sheet.lay_out(0, 7).unwrap().is_empty());
        assert_eq!(sheet.lay_out(1, 10), Err(SheetUsedUp));
    }

    proptest! {
        #[test]
        fn what_is_printed_stays_on_the_label(
            lines in prop::collection::vec("[a-z ]{0,40}", 0..5),
            modules in 29_u32..60,
            which in 0_usize..4,
        ) {
            let sheet = Sheet::ALL[which];
            let [width, height] = sheet.label();
            let filling = fill(sheet, &lines, modules);
            if let Some(code) = filling.code {
                prop_assert!(code.top.mm() >= 0.0 && code.left.mm() >= 0.0);
                prop_assert!(code.top.mm() + code.height.mm() <= height.mm());
                prop_assert!(code.left.mm() + code.width.mm() <= filling.text[0].mm());
            }
            prop_assert!(filling.text[0].mm() < width.mm());
            let bottom = filling.text[1].mm() + filling.line.mm() * lines.len() as f64;
            prop_assert!(bottom <= height.mm() + 1e-9);
        }
    }
}
