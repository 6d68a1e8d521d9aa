"""Writes the rows of own-figures.ts: regressions by scipy. python3 own-figures.py"""

import numpy
from scipy import optimize, stats


def growth(name, days, grams, celsius):
    dates = [46000 + day for day in days]
    degree_days = numpy.concatenate([[0], numpy.cumsum(numpy.diff(dates) * numpy.array(celsius[1:]))])
    fit = stats.linregress(degree_days, numpy.cbrt(grams))
    rows = [list(row) for row in zip(dates, grams, celsius)]
    print(f"    {{ name: '{name}', rows: {rows}, coefficient: {100 * fit.slope:.10g}, error: {100 * fit.stderr:.10g} }},")


def aeration(name, minutes, oxygen):
    t, c = numpy.array(minutes, float), numpy.array(oxygen, float)

    def model(time, saturation, start, rate):
        return saturation - (saturation - start) * numpy.exp(-rate * time)

    best, covariance = optimize.curve_fit(model, t, c, p0=[c[-1], c[0], 2 / t[-1]], xtol=1e-14, ftol=1e-14, gtol=1e-14)
    error = numpy.sqrt(covariance[2, 2])
    rows = [list(row) for row in zip(minutes, oxygen)]
    print(
        f"    {{ name: '{name}', rows: {rows}, saturation: {best[0]:.10g}, "
        f"rate: {60 * best[2]:.10g}, error: {60 * error:.10g} }},"
    )


print("  growth: [")
growth("three weighings", [0, 30, 60], [50, 84.3, 121], [14, 14.2, 15.1])
growth("uneven weeks", [0, 9, 21, 40, 47, 61], [31.2, 38.9, 52.1, 74, 85.5, 103], [16, 15.5, 15, 13.8, 13, 12.4])
growth("tilapia", [0, 14, 28, 42, 56], [20.4, 33, 47.9, 71.2, 95], [27, 27.5, 28, 28, 27.2])
print("  ],\n  air: [")
aeration("fine stone", [0, 2, 4, 6, 8, 12, 18], [1, 3.3, 5, 6.2, 7.1, 8, 8.7])
aeration("coarse, slow", [0, 10, 20, 30, 45, 60, 90, 120, 180], [0.4, 1.9, 3.2, 4.25, 5.5, 6.4, 7.6, 8.3, 8.9])
aeration("four readings", [1, 5, 12, 30], [2.1, 5.3, 7.9, 9.02])
aeration("noisy", [0, 1, 2, 3, 4, 5, 7, 9, 12, 15], [0.9, 2.35, 3.2, 4.4, 5.05, 5.9, 6.7, 7.65, 8.1, 8.65])
print("  ],")
