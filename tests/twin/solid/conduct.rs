//! Explicit finite-volume conduction in a body.

use super::Body;

/// What a solid is made of.
pub trait Material {
    /// Thermal conductivity at a temperature in C, W/(m K).
    fn conductivity(&self, celsius: f64) -> f64;
    /// Heat to warm a cubic metre by a degree at a temperature in C, J/(m3 K).
    fn heat_capacity(&self, celsius: f64) -> f64;
}

/// A material whose properties do not change with temperature.
#[derive(Clone, Copy, Debug)]
pub struct Constant {
    /// Thermal conductivity, W/(m K).
    pub conductivity: f64,
    /// Volumetric heat capacity, J/(m3 K).
    pub heat_capacity: f64,
}

impl Material for Constant {
    fn conductivity(&self, _: f64) -> f64 {
        self.conductivity
    }

    fn heat_capacity(&self, _: f64) -> f64 {
        self.heat_capacity
    }
}

/// Temperatures of a body's cells.
#[derive(Clone, Debug)]
pub struct Field {
    /// Temperature of each cell, C.
    pub celsius: Vec<f64>,
    conductivity: Vec<f64>,
    inflow: Vec<f64>,
}

impl Field {
    /// A body at one temperature.
    pub fn uniform(body: &Body, celsius: f64) -> Self {
        let zero = vec![0.0; body.centres.len()];
        Self { celsius: vec![celsius; zero.len()], conductivity: zero.clone(), inflow: zero }
    }

    /// Advances by `step` seconds. `flux(patch, cell_celsius, conductivity)` gives the heat that
    /// enters through a patch, W/m2. Returns all the heat that entered, J.
    pub fn advance(
        &mut self,
        body: &Body,
        material: &impl Material,
        step: f64,
        mut flux: impl FnMut(usize, f64, f64) -> f64,
    ) -> f64 {
        for (k, t) in self.conductivity.iter_mut().zip(&self.celsius) {
            *k = material.conductivity(*t);
        }
        self.inflow.fill(0.0);
        for link in &body.links {
            let [a, b] = link.cells.map(|c| c as usize);
            let k = 0.5 * (self.conductivity[a] + self.conductivity[b]);
            let heat = k * link.ratio * (self.celsius[b] - self.celsius[a]);
            self.inflow[a] += heat;
            self.inflow[b] -= heat;
        }
        let mut entered = 0.0;
        for (p, patch) in body.patches.iter().enumerate() {
            let c = patch.cell as usize;
            let heat = patch.area * flux(p, self.celsius[c], self.conductivity[c]);
            self.inflow[c] += heat;
            entered += heat;
        }
        for (c, t) in self.celsius.iter_mut().enumerate() {
            *t += step * self.inflow[c] / (body.volumes[c] * material.heat_capacity(*t));
        }
        entered * step
    }

    /// Temperature at a point inside, C: linear between cell centres, the nearest cell's own value
    /// where a neighbour is missing.
    pub fn at(&self, body: &Body, point: [f64; 3]) -> Option<f64> {
        let mesh = &body.mesh;
        let mut low = [0usize; 3];
        let mut part = [0.0; 3];
        for a in 0..3 {
            let place = (point[a] - mesh.origin[a]) / mesh.spacing[a] - 0.5;
            let bounded = place.clamp(0.0, (mesh.count[a] - 1) as f64);
            low[a] = (bounded as usize).min(mesh.count[a].saturating_sub(2));
            part[a] = (bounded - low[a] as f64).clamp(0.0, 1.0);
        }
        let (mut sum, mut weight) = (0.0, 0.0);
        for corner in 0..8 {
            let cell: [usize; 3] =
                core::array::from_fn(|a| (low[a] + (corner >> a & 1)).min(mesh.count[a] - 1));
            let w: f64 = (0..3)
                .map(|a| if corner >> a & 1 == 1 { part[a] } else { 1.0 - part[a] })
                .product();
            if let Some(c) = body.at[mesh.index(cell)] {
                sum += w * self.celsius[c as usize];
                weight += w;
            }
        }
        (weight > 1e-9).then(|| sum / weight)
    }

    /// The lowest temperature deep inside, C, and its cell: the core. A lid that stands open leaves rims
    /// and faces colder than it, where nobody pokes for the core.
    pub fn core(&self, body: &Body) -> (f64, usize) {
        let deep = body.deep.iter().map(|cell| (self.celsius[*cell as usize], *cell as usize));
        deep.fold((f64::INFINITY, 0), |low, cell| if cell.0 < low.0 { cell } else { low })
    }

    /// Heat stored above 0 C with a constant heat capacity, J.
    pub fn heat(&self, body: &Body, heat_capacity: f64) -> f64 {
        self.celsius.iter().zip(&body.volumes).map(|(t, v)| t * v * heat_capacity).sum()
    }
}

/// The longest stable step, s, for a diffusivity in m2/s and a surface coefficient over
/// conductivity in 1/m: no cell may give away more than it has.
pub fn longest_step(body: &Body, diffusivity: f64, surface_ratio: f64) -> f64 {
    let mut pull = vec![0.0; body.centres.len()];
    for link in &body.links {
        for c in link.cells {
            pull[c as usize] += link.ratio;
        }
    }
    for patch in &body.patches {
        pull[patch.cell as usize] += patch.area * robin(surface_ratio, patch.gap);
    }
    let stiffest = pull.iter().zip(&body.volumes).map(|(p, v)| p / v).fold(0.0, f64::max);
    1.0 / (diffusivity * stiffest)
}

/// Surface coefficient over conductivity, 1/m, seen from a cell centre `gap` metres behind the
/// surface.
pub fn robin(surface_ratio: f64, gap: f64) -> f64 {
    surface_ratio / (1.0 + surface_ratio * gap).max(0.2)
}
