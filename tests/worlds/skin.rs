//! How a surface dries: five laws, and the heat and water that pass it.

use twin::solid::Patch;

/// W/m2K4.
const STEFAN_BOLTZMANN: f64 = 5.670e-8;
const ICE_POINT: f64 = 273.15;
/// Heat to evaporate water at 60 C, J/kg (steam tables, from memory).
const LATENT: f64 = 2.36e6;
/// J/kgK for water vapour.
const VAPOUR_GAS: f64 = 461.5;
/// Heat held by a cubic metre of pit air per degree, J/m3K, times the Lewis factor of water in air.
const AIR_LEWIS: f64 = 0.95 * 1010.0 * 0.9;
/// From and to these temperatures of the surface, C, shrinking fibres press juice out: so many times
/// what a raw surface is fed.
const PRESSES: (f64, f64) = (50.0, 70.0);
const PRESSED: f64 = 4.0;
/// Boiling, C: no wet surface is hotter.
const BOILING: f64 = 100.0;

/// The law by which a surface gives up water.
#[derive(Clone, Copy, Debug)]
pub enum Law {
    /// Always wet, behind a skin that resists vapour by so many s/m.
    Film(f64),
    /// Water on the surface, kg/m2, fed from inside, kg/m2s while raw; half as fast when so much is left.
    Pool(f64, f64, f64),
    /// Free water, kg/m2, then a falling rate until so much more is gone, and a floor.
    Falling(f64, f64, f64),
    /// The front where water boils off recedes: so many metres of crust for each kg/m2 lost, which
    /// conducts, W/mK, and lets vapour through, m2/s.
    Crust(f64, f64, f64),
    /// No more than what seeps from inside, kg/m2 over the square root of the time in s.
    Seep(f64),
}

/// What is around a patch.
#[derive(Clone, Copy, Debug)]
pub struct Around {
    /// Air, C.
    pub air: f64,
    /// Walls, C.
    pub walls: f64,
    /// Vapour pressure of the air, Pa.
    pub vapour: f64,
    /// Convection, W/m2K.
    pub convection: f64,
    /// Share of the radiation of a black surface; none where the walls are hidden.
    pub emissivity: f64,
}

/// One patch of surface.
#[derive(Clone, Copy, Debug)]
pub struct Spot {
    /// Its temperature, C.
    pub celsius: f64,
    /// Water lost, kg/m2.
    pub lost: f64,
    /// Water on it, kg/m2.
    pool: f64,
    /// Time it has been drying, s.
    age: f64,
}

/// Saturation pressure over water, Pa (Buck 1981, from memory).
pub fn saturation(celsius: f64) -> f64 {
    611.21 * ((18.678 - celsius / 234.5) * (celsius / (257.14 + celsius))).exp()
}

/// What resists on the way to a surface: heat's way in and vapour's way out.
struct Ways {
    /// m2K/W on top of the boundary layer.
    heat: f64,
    /// s/m likewise.
    vapour: f64,
    /// Wet share of the surface.
    wet: f64,
    /// No more than this leaves, kg/m2s.
    most: f64,
}

impl Spot {
    /// Raw.
    pub fn raw(law: &Law, celsius: f64) -> Self {
        let pool = if let Law::Pool(water, ..) = law { *water } else { 0.0 };
        Self { celsius, lost: 0.0, pool, age: 0.0 }
    }

    fn ways(&self, law: &Law) -> Ways {
        let free = Ways { heat: 0.0, vapour: 0.0, wet: 1.0, most: f64::INFINITY };
        match *law {
            Law::Film(resists) => Ways { vapour: resists, ..free },
            Law::Pool(_, _, half) => Ways { wet: self.pool / (self.pool + half), ..free },
            Law::Falling(water, more, floor) => {
                let gone = ((self.lost - water) / more).max(0.0);
                Ways { wet: (1.0 - gone).max(floor), ..free }
            }
            Law::Crust(per, conducts, lets) => {
                let crust = per * self.lost;
                Ways { heat: crust / conducts, vapour: crust / lets, ..free }
            }
            Law::Seep(seeps) => Ways { most: 0.5 * seeps / self.age.max(60.0).sqrt(), ..free },
        }
    }

    /// Heat to the meat, W/m2, and water leaving, kg/m2s, were the surface this hot.
    fn exchange(ways: &Ways, around: &Around, celsius: f64) -> (f64, f64) {
        let heat = (around.air - celsius) / (1.0 / around.convection + ways.heat);
        let black = |c: f64| STEFAN_BOLTZMANN * (c + ICE_POINT).powi(4);
        // What radiates is outside of the crust, nearly as hot as the air.
        let through = 1.0 / (1.0 + ways.heat * around.convection);
        let radiation = around.emissivity * through * (black(around.walls) - black(celsius));
        let layer = AIR_LEWIS / around.convection;
        let drive = ways.wet * saturation(celsius) - around.vapour;
        let film = VAPOUR_GAS * (0.5 * (celsius + around.air) + ICE_POINT);
        let leaves = (drive / film / (layer + ways.vapour)).max(0.0);
        let water = if leaves > 0.0 { leaves / (1.0 + leaves / ways.most) } else { 0.0 };
        (heat + radiation - LATENT * water, water)
    }

    /// Heat into the piece through a patch, W/m2, over a step in s: the surface is where what comes
    /// to it goes on inwards.
    pub fn in_pit(
        &mut self,
        law: &Law,
        patch: &Patch,
        around: &Around,
        (cell, conductivity): (f64, f64),
        step: f64,
    ) -> f64 {
        let ways = self.ways(law);
        let (heat, water) = Self::exchange(&ways, around, self.celsius);
        let slope = (Self::exchange(&ways, around, self.celsius + 0.1).0 - heat) / 0.1;
        // Where a cut cell's centre lies outside, the surface is reached by going back a little; not
        // so far that the balance loses its single answer.
        let gap = patch.gap.max(0.5 * conductivity / slope);
        let miss = conductivity * (self.celsius - cell) - gap * heat;
        let change = miss / (conductivity - gap * slope);
        self.celsius = (self.celsius - change).min(BOILING + 40.0);
        self.lost += water * step;
        self.age += step;
        if let Law::Pool(_, feeds, half) = *law {
            let wet = self.pool / (self.pool + half);
            let pressed = ((self.celsius - PRESSES.0) / (PRESSES.1 - PRESSES.0)).clamp(0.0, 1.0);
            let fed = feeds * (1.0 + (PRESSED - 1.0) * pressed) * (1.0 - wet);
            self.pool = (self.pool + (fed - water) * step).max(0.0);
        }
        heat - change * slope
    }

    /// Heat into the piece as it rests, W/m2: a coefficient, W/m2K, to a room, C.
    pub fn at_rest(
        &mut self,
        patch: &Patch,
        (coefficient, room): (f64, f64),
        (cell, conductivity): (f64, f64),
    ) -> f64 {
        let resists = (1.0 + coefficient * patch.gap / conductivity).max(0.2);
        let heat = coefficient * (room - cell) / resists;
        self.celsius = cell + heat * patch.gap / conductivity;
        heat
    }
}
