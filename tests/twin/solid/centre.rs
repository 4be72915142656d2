//! When the centre of a body with a convective surface gets to a given temperature.

use super::{Body, Brick, Constant, Ellipsoid, Field, Mesh, Shape, conduct};

/// Fourier number (on the first semi-axis) at which the centre of an ellipsoid has `ratio` of its
/// temperature change still to come. `biot` is on the first semi-axis; `cells` are the cells along
/// each semi-axis: 20 gives about 0.5 %.
pub fn ellipsoid_centre_time(semi_axes: [f64; 3], biot: f64, ratio: f64, cells: usize) -> f64 {
    let scaled = semi_axes.map(|a| a / semi_axes[0]);
    centre_time(&Ellipsoid { semi_axes: scaled }, scaled, biot, ratio, cells)
}

/// The same for a brick, by its half-edges.
pub fn brick_centre_time(half_edges: [f64; 3], biot: f64, ratio: f64, cells: usize) -> f64 {
    let scaled = half_edges.map(|a| a / half_edges[0]);
    centre_time(&Brick { half_edges: scaled }, scaled, biot, ratio, cells)
}

/// Unit conductivity, heat capacity and first semi-axis make time the Fourier number and the
/// surface coefficient the Biot number. One octant is enough.
fn centre_time(shape: &impl Shape, extent: [f64; 3], biot: f64, ratio: f64, cells: usize) -> f64 {
    let mesh =
        Mesh { origin: [0.0; 3], spacing: extent.map(|e| e / cells as f64), count: [cells; 3] };
    let body = Body::new(shape, mesh);
    let unit = Constant { conductivity: 1.0, heat_capacity: 1.0 };
    let step = 0.9 * conduct::longest_step(&body, 1.0, biot);
    let mut field = Field::uniform(&body, 1.0);
    let (mut time, mut before) = (0.0, 1.0);
    loop {
        field.advance(&body, &unit, step, |p, t, _| -t * conduct::robin(biot, body.patches[p].gap));
        let now = at_origin(&body, &field);
        if now <= ratio {
            // The approach is nearly exponential, so interpolate the logarithm.
            return time + step * (before / ratio).ln() / (before / now).ln();
        }
        time += step;
        before = now;
    }
}

/// Temperature at the corner of the octant, where the field is even in each coordinate: the
/// parabola through the first two cells of each axis.
fn at_origin(body: &Body, field: &Field) -> f64 {
    let value = |cell: [usize; 3]| {
        body.at[body.mesh.index(cell)].map_or(0.0, |c| field.celsius[c as usize])
    };
    let first = value([0, 0, 0]);
    first
        + (0..3)
            .map(|axis| {
                let mut next = [0; 3];
                next[axis] = 1;
                (first - value(next)) / 8.0
            })
            .sum::<f64>()
}
