"""The heat model's equations written anew, solved by SciPy's solve_ivp, beside the model's own trace.

    cargo build -p bench --release --bin native
    python3 -m venv /tmp/scipy && /tmp/scipy/bin/pip install scipy
    /tmp/scipy/bin/python tests/published/scipy/compare.py target/release/native

Prints how far the two are apart, and how long each takes at an error of 0.1 F. The equations here
follow the documentation of `cook_model::heat`; nothing of the program is used but its results.
"""

import json
import subprocess
import sys
import time

import numpy as np
from scipy.integrate import solve_ivp

ALLOWED_F = 0.1
OFF, END = 90 * 60.0, 120 * 60.0

# Choi & Okos 1986: constant, linear and square coefficient in C of conductivity, density, capacity.
WATER = ([0.57109, 1.7625e-3, -6.7036e-6], [997.18, 3.1439e-3, -3.7574e-3], [4.1289, -9.0864e-5, 5.4731e-6])
PROTEIN = ([0.17881, 1.1958e-3, -2.7178e-6], [1329.9, -0.5184, 0.0], [2.0082, 1.2089e-3, -1.3129e-6])
FAT = ([0.18071, -2.7604e-4, -1.7749e-7], [925.59, -0.41757, 0.0], [1.9842, 1.4733e-3, -4.8008e-6])
ASH = ([0.32962, 1.4011e-3, -2.9069e-6], [2423.8, -0.28063, 0.0], [1.0926, 1.8896e-3, -3.6817e-6])
PARTS = np.array([73.90, 22.50, 2.62, 1.1])
PARTS = PARTS / PARTS.sum()
COMPONENTS = [WATER, PROTEIN, FAT, ASH]


def components(which, celsius):
    return np.array([np.polyval(c[which][::-1], celsius) for c in COMPONENTS])


def density(celsius):
    return 1.0 / np.sum(PARTS / components(1, celsius))


def conductivity(celsius):
    """Maxwell-Eucken, solids in water."""
    volumes = PARTS * density(celsius) / components(1, celsius)
    k = components(0, celsius)
    share = volumes[1:].sum()
    kc, kd = k[0], (volumes[1:] * k[1:]).sum() / share
    return kc * (2 * kc + kd - 2 * share * (kc - kd)) / (2 * kc + kd + share * (kc - kd))


def integral(f, to):
    """From 0 C, far finer than it need be."""
    at, weights = np.polynomial.legendre.leggauss(20)
    return to / 2 * sum(w * f(to / 2 * (1 + x)) for x, w in zip(at, weights))


RAW = density(5.0)
FIT_AT = np.array([-1.1, 28.0, 75.0, 122.0, 151.1])
SCALE = 1e8
HEAT = np.array([RAW * 1e3 * integral(lambda c: PARTS @ components(2, c), t) for t in FIT_AT]) / SCALE
POTENTIAL = np.array([integral(conductivity, t) for t in FIT_AT])
T_OF_H, U_OF_H = np.polyfit(HEAT, FIT_AT, 4), np.polyfit(HEAT, POTENTIAL, 4)
DT_OF_H, DU_OF_H = np.polyder(T_OF_H), np.polyder(U_OF_H)


def heat_at(celsius):
    roots = np.roots(np.append(T_OF_H[:-1], T_OF_H[-1] - celsius))
    return min((r.real for r in roots if abs(r.imag) < 1e-9), key=lambda h: abs(h - celsius / 28)) * SCALE


class Breast:
    """An ellipsoid on two coordinates: 320 g, 38 mm thick."""

    def __init__(self, kg=0.320, thick=0.038, through=16, out=10):
        area = kg / (1060.0 * 0.524 * thick)
        length = np.sqrt(area / 0.58)
        width = 0.58 * length
        self.half = thick / 2
        reach, ratio = max(width / thick, 1.0), length / width
        curvature = 1.492 * (1 + ratio**-2) / reach**2
        m = 1 + 1.287 * (reach / 2.5) ** -0.208 * ratio**-1.247
        self.bend = 2.227
        self.x, edges = graded(through, 1.0, 0.6)
        a = lambda x: np.exp(0.5 * curvature * (x * x - 1))
        mid = 0.5 * (edges[1:] + edges[:-1])
        self.per_volume = 6 / ((edges[1:] - edges[:-1]) * (a(edges[1:]) + 4 * a(mid) + a(edges[:-1])))
        self.conductance = a(edges[1:-1]) / np.diff(self.x)
        self.share = np.diff(edges)
        self.mean_square = self.share @ self.x**2
        self.y, edges = graded(out, reach, 0.4)
        self.height = np.sqrt(np.maximum(0, 1 - (self.y / reach) ** 2))
        volumes, surfaces = zip(*(ring(lo, hi, reach, m) for lo, hi in zip(edges[:-1], edges[1:])))
        self.per_volume_y, self.surface = 1 / np.array(volumes), np.array(surfaces)
        inner = edges[1:-1]
        self.conductance_y = inner ** (m - 1) * np.sqrt(1 - (inner / reach) ** 2) / np.diff(self.y)


def graded(cells, reach, grading):
    s = np.arange(cells + 1) / cells
    nodes = reach * (s + grading * s * (1 - s))
    return nodes, np.concatenate([[0], 0.5 * (nodes[1:] + nodes[:-1]), [reach]])


def ring(lo, hi, reach, m, parts=16):
    first, last = np.arcsin(lo / reach), np.arcsin(min(hi / reach, 1.0))
    step = (last - first) / parts
    a = first + (np.arange(parts) + 0.5) * step
    across = (reach * np.sin(a)) ** (m - 1) * step
    return (across * reach * np.cos(a) ** 2).sum(), (across * np.hypot(reach * np.cos(a), np.sin(a))).sum()


PIT = dict(h=14.0, emissivity=0.9, vapour=3.0, halves=0.07, air=(250 - 32) / 1.8)
FOIL = dict(h=8.0, emissivity=0.0, vapour=None, halves=None, air=20.0)


def flux(s, celsius, lost):
    """Net heat in, W/m2, its slope by temperature, water out and its slope; the slope as the model has it."""
    q, dq = s["h"] * (s["air"] - celsius), -s["h"]
    black = s["emissivity"] * 5.670374419e-8
    q += black * ((s["air"] + 273.15) ** 4 - (celsius + 273.15) ** 4)
    dq -= 4 * black * (celsius + 273.15) ** 3
    if s["vapour"] is None:
        return q, dq, 0.0, 0.0
    saturated = np.exp(16.56989 - 3984.923 / (celsius + 233.426))
    slope = saturated * 3984.923 / (celsius + 233.426) ** 2
    room = 101.325 - s["vapour"]
    part = (saturated - s["vapour"]) / room
    wet = s["h"] * 0.622 / (1013.0 * 0.90) * (s["halves"] / (s["halves"] + max(lost, 0)) if part > 0 else 1.0)
    logged = min(part, 0.65)
    drive, ddrive = -np.log(1 - logged), 1 / (1 - logged)
    if part > 0.65:
        fading = np.exp((0.65 - part) * ddrive)
        drive, ddrive = drive + 1 - fading, ddrive * fading
    latent = 2.501e6 - 2440.0 * celsius
    water, dwater = wet * drive, wet * ddrive * slope / room
    return q - latent * water, dq - latent * dwater, water, dwater


def rates(b, s):
    """The right-hand side for unknowns: heat through the thickness, out to the edge, and water lost."""
    n = len(b.x)

    def f(_, unknowns):
        heat, lost = unknowns[:-1] / SCALE, unknowns[-1]
        potential = np.polyval(U_OF_H, heat)
        top = np.polyval(T_OF_H, heat[n - 1])
        net, slope, water, dwater = flux(s, top, lost)
        entering, slope = b.half * net, b.half * slope
        biot = -slope * np.polyval(DT_OF_H, heat[n - 1]) / np.polyval(DU_OF_H, heat[n - 1])
        flows = np.concatenate([[0], b.conductance * np.diff(potential[:n]), [entering]])
        through = b.per_volume * np.diff(flows) / b.half**2
        mean = b.share @ heat[:n]
        along = np.concatenate([[mean], heat[n:]])
        celsius, along_potential = np.polyval(T_OF_H, along), np.polyval(U_OF_H, along)
        q = (entering * (1 + biot / 3) + slope * (celsius - celsius[0])) / (1 + biot * b.height / 3)
        q[0] = entering
        flows = np.concatenate([[0], b.conductance_y * np.diff(along_potential), [0]])
        out = b.per_volume_y * (np.diff(flows) + b.surface * q) / b.half**2
        bend = b.bend * biot / (biot + 2)
        spread = (1 - bend * b.x**2) / (1 - bend * b.mean_square)
        through += (out[0] - b.share @ through) * spread
        warmer = ((b.surface @ q) / b.surface.sum() - entering) / slope
        return np.concatenate([through, out[1:], [water + dwater * warmer]])

    return f


def solve(b, method, tolerance_k):
    """Core in C at each minute; the time it took, s."""
    minutes = np.arange(0, END + 1, 60)
    unknowns = np.full(len(b.x) + len(b.y) - 1, heat_at((38 - 32) / 1.8))
    unknowns = np.append(unknowns, 0.0)
    atol = np.append(np.full(len(unknowns) - 1, 3.8e6), 2e-3) * tolerance_k
    began, cores = time.perf_counter(), []
    for s, lo, hi in ((PIT, 0.0, OFF), (FOIL, OFF, END)):
        at = minutes[(minutes >= lo) & (minutes <= hi)]
        got = solve_ivp(rates(b, s), (lo, hi), unknowns, method, t_eval=at, rtol=1e-12, atol=atol)
        assert got.success, got.message
        unknowns = got.y[:, -1]
        cores.append(np.polyval(T_OF_H, got.y[0] / SCALE)[(1 if lo else 0) :])
    return np.concatenate(cores), time.perf_counter() - began


def main(native):
    ask = lambda what: json.loads(subprocess.run([native, what], capture_output=True, check=True).stdout)
    own, breast = np.array(ask("trace")), Breast()
    exact, _ = solve(breast, "BDF", 1e-6)
    off = 1.8 * np.abs(own - exact).max()
    own_us = min(ask("time")["heat_trace"] for _ in range(5)) / 1e3
    print(f"the model's own trace: {off:.4f} F from SciPy's converged one; {own_us:.0f} us")
    assert off < ALLOWED_F
    for method in ("BDF", "LSODA", "Radau"):
        # The loosest tolerance that is good enough, by halving from far too loose.
        tolerance = 2.0
        while 1.8 * np.abs(solve(breast, method, tolerance)[0] - exact).max() > ALLOWED_F:
            tolerance /= 1.5
        took = min(solve(breast, method, tolerance)[1] for _ in range(5)) * 1e6
        error = 1.8 * np.abs(solve(breast, method, tolerance)[0] - exact).max()
        print(f"solve_ivp {method}: {error:.3f} F at {tolerance:.3g} K; {took:.0f} us, {took / own_us:.0f} times as long")


if __name__ == "__main__":
    main(sys.argv[1])
