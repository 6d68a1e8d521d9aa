"""Computes again the published rows that say `computed`, by the key of their source, and compares.

python3 published-figures.py, with fluids 1.0.22, gsw 3.6.16, scipy 1.10.1 and GNU units 2.22 as Debian 12 has them. The
rows themselves stand in test/published; what is printed after each key is what was computed and what the row says.
"""

import subprocess
import sys
from math import erf, exp, log, log10, pi, sqrt

import fluids
import gsw
from scipy import integrate, interpolate, optimize

INCH, FOOT, GALLON, G = 0.0254, 0.3048, 231 * 0.0254**3, 9.80665
DENSITY, VISCOSITY = 998.2067, 1.0016e-3
wrong = 0


def row(key, computed, printed, tolerance=5e-5):
    global wrong
    off = abs(computed / printed - 1) > tolerance
    wrong += off
    print(f"{'OFF ' if off else ''}{key}: {computed:.8g} ({printed:.8g})")


def loss(flow, bore, length, k=0.0):
    """Head lost in m, flow in m3/s, lengths in m."""
    velocity = flow / (pi / 4 * bore**2)
    factor = fluids.friction.Colebrook(velocity * bore * DENSITY / VISCOSITY, 1.5e-6 / bore)
    return (factor * length / bore + k) * velocity**2 / (2 * G)


gpm = GALLON / 60
for bore, flow, printed in ((0.804, 8, 13.898), (1.59, 20, 2.711), (2.047, 40, 2.780), (3.998, 100, 0.578)):
    row("fluids-colebrook", loss(flow * gpm, bore * INCH, 100 * FOOT) / FOOT, printed, 1e-3)
row("fluids-colebrook", loss(10 / 3600, 0.057, 50), 1.06214)


def gravity(bore, length, drop, k):
    return optimize.brentq(lambda flow: loss(flow, bore, length, k) - drop, 1e-6, 1, xtol=1e-16)


row("fluids-colebrook-brentq", gravity(2.047 * INCH, 10 * FOOT, 0.5 * FOOT, 1.5) / gpm, 35.35572)
row("fluids-colebrook-brentq", gravity(3.042 * INCH, 20 * FOOT, 3 * INCH, 2.5) * 6e4, 168.13638158733846)


def duty(curve, lift, bore, length, k):
    head = interpolate.PchipInterpolator(*zip(*[(flow * gpm, h * FOOT) for flow, h in curve]))
    return optimize.brentq(lambda flow: head(flow) - lift - loss(flow, bore, length, k), 1e-6, curve[-1][0] * gpm, xtol=1e-16), head


flow, _ = duty([(0, 12), (10, 10), (20, 6), (30, 0)], 4 * FOOT, 1.59 * INCH, 30 * FOOT, 2)
row("fluids-colebrook-pchip", flow / gpm, 21.419549)
flow, head = duty([(0, 22), (20, 20), (40, 15), (60, 6)], 8 * FOOT, 2.047 * INCH, 60 * FOOT, 5)
row("fluids-colebrook-pchip", float(head(flow)), 3.65736115872)

def terminal(size, density, law, water=DENSITY, viscosity=VISCOSITY):
    """Terminal velocity in mm/s by a drag coefficient as a function of the Reynolds number."""

    def excess(v):
        return v - sqrt(4 * G * (density / water - 1) * size / (3 * law(water * v * size / viscosity)))

    return 1e3 * optimize.brentq(excess, 1e-6, 1, xtol=1e-15)


def schiller(reynolds):
    return 24 / reynolds * (1 + 0.15 * reynolds**0.687)


warm = {"water": 997.047, "viscosity": 0.89002e-3}
falls = ((70e-6, 2600, "Barati", 4.14098), (70e-6, 2600, "Clift", 4.08395), (1e-3, 2650, "Clift", 157.774))
for size, density, law, printed in falls:
    fall = 1e3 * fluids.v_terminal(D=size, rhop=density, rho=DENSITY, mu=VISCOSITY, Method=law)
    row("fluids-v-terminal", fall, printed, 2e-4)
fall = 1e3 * fluids.v_terminal(D=5e-4, rhop=1190, rho=997.047, mu=0.89002e-3, Method="Clift")
row("fluids-v-terminal", fall, 16.922, 2e-4)
cheng = lambda re: 24 / re * (1 + 0.27 * re) ** 0.43 + 0.47 * (1 - exp(-0.04 * re**0.38))
row("fluids-v-terminal", terminal(1e-4, 2650, cheng), 8.2392, 2e-4)
row("fluids-v-terminal", terminal(1e-3, 2650, schiller), 155.21, 2e-4)
row("fluids-v-terminal", terminal(1e-4, 2650, schiller), 7.9653, 2e-4)
row("fluids-v-terminal", terminal(1e-4, 1190, schiller, **warm), 1.1396, 2e-4)

for celsius, printed in ((0, 1028.1075), (10, 1026.9546), (20, 1024.7658), (30, 1021.7263)):
    absolute = 35 * 35.16504 / 35
    row("teos-10-gsw-3", gsw.rho(absolute, gsw.CT_from_t(absolute, celsius, 0), 0), printed, 1e-6)
row("teos-10-gsw-3", gsw.rho(35, gsw.CT_from_t(35, 20, 0), 0), 1024.641, 1e-6)


def captured(ratio, spread, passing):
    deviation = log(spread)
    bell = lambda x: exp(-x * x / 2) / sqrt(2 * pi) * passing(ratio * exp(deviation * x))
    ends = (-10, -log(ratio) / deviation, 10)
    return 1 - sum(integrate.quad(bell, a, b, epsabs=1e-13)[0] for a, b in zip(ends, ends[1:]))


row("scipy-quad", captured(2.7, 6, lambda v: 1 / (1 + v)), 0.6558314923, 1e-9)
row("scipy-quad", captured(1, 2.5, lambda v: max(0, 1 - v)), 0.7735273129, 1e-9)
row("scipy-quad", captured(1, 2.5, lambda v: (1 + v / 50) ** -250), 0.9366065334, 1e-9)


def units(*words):
    return float(subprocess.run(["units", "-t", *words], capture_output=True, text=True, check=True).stdout)


row("gnu-units-2-22", units("2 m^2 * 0.5 oz/ft^2 / (lb/day)", "day"), 0.672744401, 1e-8)
row("gnu-units-2-22", units("2 day * lb/day / (ft^2 * oz/ft^2)"), 32, 1e-12)

row("stokes-law-water-998", 1e3 * G * (2650 - 998.207) * 1e-8 / (18 * 1.0016e-3), 8.9849)
row("stokes-law-water-997", 1e3 * G * (1190 - 997.047) * 1e-8 / (18 * 0.89e-3), 1.1811, 1e-4)

grit = {"water": 1000, "viscosity": 0.955e-3}
row("davis-water-wastewater-engineering", terminal(2e-4, 2650, schiller, **grit), 25.54, 2e-3)
fair = lambda re: 24 / re + 3 / sqrt(re) + 0.34
row("davis-water-wastewater-engineering", terminal(2e-4, 2650, fair, **grit), 27.3, 2e-3)

ferguson = 1.65 * G * 1e-6 / (18 * 1e-6 + sqrt(0.75 * 1.0 * 1.65 * G * 1e-9))
row("ferguson-church-sedimentary-research", 1e3 * ferguson, 126.25, 1e-4)
row("hagen-poiseuille-128-mu", 128 * VISCOSITY * 10 * 1e-5 / (pi * DENSITY * G * 0.02**4), 0.00260551, 1e-4)
row("hazen-williams-with-c", 10.44 * 100 * 40**1.85 / (150**1.85 * 2.047**4.8655), 2.773, 2e-3)


def oxygen(celsius, salinity=0.0, atmospheres=1.0):
    """APHA 4500-O from Benson and Krause: mg/L."""
    t = celsius + 273.15
    fresh = -139.34411 + 1.575701e5 / t - 6.642308e7 / t**2 + 1.243800e10 / t**3 - 8.621949e11 / t**4
    salt = salinity * (1.7674e-2 - 10.754 / t + 2140.7 / t**2)
    vapor = exp(11.8571 - 3840.70 / t - 216961 / t**2)
    theta = 0.000975 - 1.426e-5 * celsius + 6.436e-8 * celsius**2
    pressure = atmospheres * (1 - vapor / atmospheres) * (1 - theta * atmospheres) / ((1 - vapor) * (1 - theta))
    return exp(fresh - salt) * pressure


for celsius, salinity, atmospheres, printed in (
    (0, 0, 1, 14.621), (10, 0, 1, 11.288), (20, 0, 1, 9.092), (30, 0, 1, 7.559),
    (0, 35, 1, 11.446), (10, 35, 1, 9.024), (20, 35, 1, 7.396), (30, 35, 1, 6.237),
    (0, 0, 0.95, 13.886), (20, 0, 0.95, 8.627), (30, 0, 0.95, 7.165),
):  # fmt: skip
    row("apha-standard-methods-4500", oxygen(celsius, salinity, atmospheres), printed, 1e-4)

tanaka = 999.974950 * (1 - (20 - 3.983035) ** 2 * (20 + 301.797) / (522528.9 * (20 + 69.34881)))
row("tanaka-metrologia-38-301", tanaka, 998.2067, 1e-7)
row("emerson-fisheries-research-board", 100 / (1 + 10 ** (0.09018 + 2729.92 / 293.15 - 8)), 3.807, 2e-4)


def sharqawy(celsius, salinity):
    """Viscosity of sea water over that of pure water, times IAPWS's for pure water, mPa s."""
    s = salinity / 1000
    a = 1.541 + 1.998e-2 * celsius - 9.52e-5 * celsius**2
    b = 7.974 - 7.561e-2 * celsius + 4.724e-4 * celsius**2
    return 1 + a * s + b * s * s


for celsius, pure, printed in ((10, 1.30590, 1.39677), (20, 1.00160, 1.07663), (25, 0.89002, 0.95883)):
    row("sharqawy-desalination-water-treatment", pure * sharqawy(celsius, 35), printed, 1e-3)

kell = 999.83952 + 16.945176 * 20 - 7.9870401e-3 * 400 - 46.170461e-6 * 8000
kell += 105.56302e-9 * 160000 - 280.54253e-12 * 3.2e6
row("kells-equation-with-misprint", kell / (1 + 16.897850e-3 * 20), 997.94, 1e-5)

sys.exit(1 if wrong else 0)
