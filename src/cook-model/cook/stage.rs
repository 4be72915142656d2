use serde::Serialize;

/// Where a piece stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Stage {
    /// Set out, not yet on the pit.
    Raw,
    /// On the pit.
    On,
    /// Off the pit, and not proved by readings.
    Resting,
    /// Off the pit, and its readings satisfy the safety rule chosen.
    Proved,
    /// Served, or portioned and bagged.
    Packed,
}
