//! Heat and water at the surface of a piece: uneven convection, radiation, a drying skin.

use crate::solid::{Body, Patch};

/// Heat to evaporate water at 60 C, J/kg (steam tables, from memory).
const LATENT_HEAT: f64 = 2.36e6;
/// W/(m2 K4).
const STEFAN_BOLTZMANN: f64 = 5.670e-8;
const ICE_POINT: f64 = 273.15;
/// J/(kg K) for water vapour.
const VAPOUR_GAS_CONSTANT: f64 = 461.5;
/// Heat held by a cubic metre of pit air per degree, J/(m3 K), times the Lewis factor of water in
/// air, 0.9.
const AIR_LEWIS: f64 = 0.95 * 1010.0 * 0.9;
/// The expressed juice starts above this surface temperature, C, and is in full flow this much above.
const EXPRESS_FROM: f64 = 50.0;
const EXPRESS_OVER: f64 = 20.0;
/// Expressed juice at full flow over what a raw surface is given.
const EXPRESSED: f64 = 5.0;
/// Water within reach of the surface, kg/m2: as it is given, a drying crust slows the rest.
const REACH: f64 = 1.0;

/// How a piece and its place exchange heat and water with the pit.
#[derive(Clone, Copy, Debug)]
pub struct Exchange {
    /// Mean convection coefficient, W/(m2 K).
    pub convection: f64,
    /// Convection on the upper side over the mean, less one; the lower side has the opposite.
    pub top_bias: f64,
    /// Convection at the windward end over the mean, less one.
    pub end_bias: f64,
    /// Emissivity of the surface.
    pub emissivity: f64,
    /// Conductance of the grate over the underside, W/(m2 K).
    pub grate: f64,
    /// Water on the surface at the start, kg/m2.
    pub water: f64,
    /// Water that the meat gives to a dry surface, kg/(m2 s), before juice is expressed.
    pub supply: f64,
    /// Water at which the surface evaporates half as fast as free water, kg/m2.
    pub half_wet: f64,
}

/// The air and walls around a piece.
#[derive(Clone, Copy, Debug)]
pub struct Surroundings {
    /// Air at the piece, C.
    pub air: f64,
    /// Walls, lid and deflector, C.
    pub walls: f64,
    /// Vapour pressure of the air, Pa.
    pub vapour: f64,
}

/// Still air and loose foil on a board.
#[derive(Clone, Copy, Debug)]
pub struct Rest {
    /// The room, C.
    pub room: f64,
    /// Coefficient through foil above, W/(m2 K).
    pub foil: f64,
    /// Coefficient into the board below, W/(m2 K).
    pub board: f64,
}

/// State of the surface, patch by patch.
#[derive(Clone, Debug)]
pub struct Skin {
    /// Surface temperature, C.
    celsius: Vec<f64>,
    /// Water, kg/m2.
    water: Vec<f64>,
    /// Water within reach that has not come to the surface yet, kg/m2.
    store: Vec<f64>,
    exchange: Exchange,
}

/// Saturation pressure over water, Pa (Tetens 1930).
fn saturation(celsius: f64) -> f64 {
    610.78 * (17.27 * celsius / (celsius + 237.3)).exp()
}

impl Skin {
    /// A raw surface at a temperature in C.
    pub fn new(body: &Body, exchange: Exchange, celsius: f64) -> Self {
        let patches = body.patches.len();
        Self {
            celsius: vec![celsius; patches],
            water: vec![exchange.water; patches],
            store: vec![REACH; patches],
            exchange,
        }
    }

    /// Water evaporated so far, mean over the surface, kg/m2.
    pub fn evaporated(&self, body: &Body) -> f64 {
        let had = REACH + self.exchange.water;
        let lost = self.water.iter().zip(&self.store).map(|(w, s)| had - w - s);
        body.patches.iter().zip(lost).map(|(p, l)| p.area * l).sum::<f64>() / body.area()
    }

    /// Heat into the piece through a patch in the pit, W/m2, over a step in seconds.
    pub fn in_pit(
        &mut self,
        index: usize,
        patch: &Patch,
        around: &Surroundings,
        inside: (f64, f64),
        step: f64,
    ) -> f64 {
        let (cell, conductivity) = inside;
        let e = &self.exchange;
        let up = patch.normal[2];
        let convection =
            e.convection * (1.0 + e.top_bias * up + e.end_bias * patch.normal[0]).max(0.2);
        let contact = if up < 0.0 { e.grate * up * up } else { 0.0 };
        let wetness = self.water[index] / (self.water[index] + e.half_wet);
        let surface = self.celsius[index];
        let transfer = convection / AIR_LEWIS / (VAPOUR_GAS_CONSTANT * (surface + ICE_POINT));
        let wet = saturation(surface);
        let evaporation = (transfer * (wetness * wet - around.vapour)).max(0.0);
        let (s, w) = (surface + ICE_POINT, around.walls + ICE_POINT);
        let radiation = e.emissivity * STEFAN_BOLTZMANN * (w.powi(4) - s.powi(4));
        let flux =
            (convection + contact) * (around.air - surface) + radiation - LATENT_HEAT * evaporation;
        // Slope of the flux with the surface temperature, for one Newton step.
        let wet_slope = wet * 4098.0 / ((surface + 237.3) * (surface + 237.3));
        let slope = -(convection + contact)
            - 4.0 * e.emissivity * STEFAN_BOLTZMANN * s.powi(3)
            - if evaporation > 0.0 { LATENT_HEAT * transfer * wetness * wet_slope } else { 0.0 };
        // Where a cut cell's centre lies outside, the surface is reached by going back a little;
        // not so far that the balance loses its single answer.
        let gap = patch.gap.max(0.5 * conductivity / slope);
        let miss = conductivity * (surface - cell) - gap * flux;
        let change = miss / (conductivity - gap * slope);
        self.celsius[index] = surface - change;
        let express = ((surface - EXPRESS_FROM) / EXPRESS_OVER).clamp(0.0, 1.0);
        let left = self.store[index] / REACH;
        let given = e.supply * (1.0 + EXPRESSED * express) * (1.0 - wetness) * left * step;
        self.store[index] -= given;
        self.water[index] = (self.water[index] + given - evaporation * step).max(0.0);
        flux - change * slope
    }

    /// Heat into the piece through a patch as it rests, W/m2.
    pub fn at_rest(&mut self, index: usize, patch: &Patch, rest: &Rest, inside: (f64, f64)) -> f64 {
        let (cell, conductivity) = inside;
        let coefficient = if patch.normal[2] < -0.5 { rest.board } else { rest.foil };
        let flux = coefficient * (rest.room - cell)
            / (1.0 + coefficient * patch.gap / conductivity).max(0.2);
        self.celsius[index] = cell + flux * patch.gap / conductivity;
        flux
    }
}
