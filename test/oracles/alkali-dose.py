"""Writes the rows of alkali-dose.ts with PHREEQC 3 (US Geological Survey), database phreeqc.dat.

python3 alkali-dose.py PHREEQC_PROGRAM PHREEQC_DAT

Each row: degrees C, pH, alkalinity mg/L as CaCO3, alkali, rise mg/L as CaCO3, pH in a closed bottle, pH with carbon dioxide
held at the level before the dose. PHREEQC corrects for ionic strength, ours does not: hence the tolerance of the test.
"""

import subprocess
import sys
import tempfile
from pathlib import Path

PROGRAM, DATABASE = sys.argv[1:]
EQUIVALENT = 50.043
ALKALIS = {
    "sodium bicarbonate": ("NaHCO3", 1),
    "sodium carbonate": ("Na2CO3", 2),
    "calcium hydroxide": ("Ca(OH)2", 2),
    "sodium hydroxide": ("NaOH", 1),
}
WATERS = [(10, 6.8, 50), (25, 6.8, 50), (25, 7.4, 100), (15, 7.0, 20), (28, 7.8, 150)]
RISES = [10, 50, 100]


def run(text):
    with tempfile.TemporaryDirectory() as folder:
        Path(folder, "in").write_text(text)
        subprocess.run([PROGRAM, "in", "out", DATABASE], cwd=folder, check=True, capture_output=True)
        lines = Path(folder, "rows").read_text().split("\n")[1:]
        return [[float(cell) for cell in line.split()] for line in lines if line.strip()]


PUNCH = """SELECTED_OUTPUT 1
 -file rows
 -reset false
USER_PUNCH 1
 -headings ph gas
 10 PUNCH -LA("H+"), SI("CO2(g)")
"""


def solution(celsius, ph, alkalinity):
    return f"""SOLUTION 1
 temp {celsius}
 pH {ph}
 units mmol/kgw
 Alkalinity {alkalinity / EQUIVALENT}
 Na 1 charge
SAVE solution 1
END
"""


for celsius, ph, alkalinity in WATERS:
    [[_, gas]] = run(PUNCH + solution(celsius, ph, alkalinity))
    for name, (formula, charge) in ALKALIS.items():
        for rise in RISES:
            dose = f"USE solution 1\nREACTION 1\n {formula} 1\n {rise / EQUIVALENT / charge}e-3 moles\n"
            air = f"EQUILIBRIUM_PHASES 1\n CO2(g) {gas} 10\n"
            rows = run(PUNCH + solution(celsius, ph, alkalinity) + dose + "END\n" + dose + air + "END\n")
            print(f"    [{celsius}, {ph}, {alkalinity}, '{name}', {rise}, {rows[1][0]:.4f}, {rows[2][0]:.4f}],")
