//! A pack of breasts of which only the whole is weighed: its weight shared out by what the eye sees.

use crate::quantity::{Length, Mass};

/// How a piece looks beside the others of its pack.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Size {
    /// Plainly smaller than most.
    Small,
    /// As most are.
    Usual,
    /// Plainly larger than most.
    Large,
}

impl Size {
    /// Its weight beside a usual one's. That a piece is taken for smaller or larger from about a
    /// quarter on is an assumption, no source; a piece that matters is weighed.
    const fn part(self) -> f64 {
        match self {
            Self::Small => 0.75,
            Self::Usual => 1.0,
            Self::Large => 1.25,
        }
    }
}

/// Shares a pack's weight out to its pieces. Each is of one shape: where the usual one's thickness is
/// known, the others' goes with the cube root of their weight.
pub fn share_out(pack: Mass, usual: Option<Length>, sizes: &[Size]) -> Vec<(Mass, Option<Length>)> {
    let parts: f64 = sizes.iter().map(|size| size.part()).sum();
    let of = |size: &Size| {
        (pack * (size.part() / parts), usual.map(|usual| usual * libm::cbrt(size.part())))
    };
    sizes.iter().map(of).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A pack is no heavier for being looked at.
    #[test]
    fn the_pieces_weigh_what_the_pack_weighs() {
        let sizes = [Size::Small, Size::Large, Size::Usual, Size::Usual, Size::Large];
        let pieces = share_out(Mass::from_g(1250.0), Some(Length::from_mm(36.0)), &sizes);
        let weight: f64 = pieces.iter().map(|piece| piece.0.g()).sum();
        assert!((weight - 1250.0).abs() < 1e-9, "{weight}");
        assert!(pieces[0].0 < pieces[2].0 && pieces[2].0 < pieces[1].0);
        assert!(pieces[0].1 < pieces[2].1 && pieces[2].1 < pieces[1].1);
        assert_eq!(pieces[2].1, Some(Length::from_mm(36.0)));
    }

    #[test]
    fn alike_they_share_it_alike() {
        let pieces = share_out(Mass::from_g(900.0), None, &[Size::Usual; 3]);
        assert!(pieces.iter().all(|piece| piece.0 == Mass::from_g(300.0) && piece.1.is_none()));
    }
}
