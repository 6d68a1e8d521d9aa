"""Makes drum-store.xlsx with openpyxl 3.0.9: a workbook full of what the add-in's own sheets do not use."""
import os
import struct
import sys
import zlib

from openpyxl import Workbook
from openpyxl.chart import PieChart, Reference
from openpyxl.comments import Comment
from openpyxl.drawing.image import Image
from openpyxl.formatting.rule import CellIsRule, ColorScaleRule, DataBarRule, IconSetRule
from openpyxl.styles import Font, PatternFill
from openpyxl.workbook.defined_name import DefinedName
from openpyxl.worksheet.datavalidation import DataValidation


def png(path):
    """A blue square of 16 pixels."""
    rows = b"".join(b"\0" + b"\x1f\x6f\xb5" * 16 for _ in range(16))
    def chunk(kind, data):
        return struct.pack(">I", len(data)) + kind + data + struct.pack(">I", zlib.crc32(kind + data))
    with open(path, "wb") as file:
        file.write(b"\x89PNG\r\n\x1a\n" + chunk(b"IHDR", struct.pack(">IIBBBBB", 16, 16, 8, 2, 0, 0, 0))
                   + chunk(b"IDAT", zlib.compress(rows)) + chunk(b"IEND", b""))


folder = sys.argv[1]
book = Workbook()
store = book.active
store.title = "Drum store"
store.append(["Drum", "Bore in", "Height in", "State", "Volume gal"])
for row, (name, bore, height, state) in enumerate(
    [("Fern", 22.5, 34, "sound"), ("Moss", 21.75, 33.5, "dented"), ("Reed", 23, 35, "sound"), ("Rush", 22, 34.5, "scrap")], 2
):
    store.append([name, bore, height, state, f"=ROUND(PI()*(B{row}/2)^2*C{row}/231,2)"])
store["A7"], store["B7"], store["E7"] = "Mean bore", "=AVERAGE(B2:B5)", "=SUM(E2:E5)"
store["A8"] = "Good ones"
store["B8"] = '=COUNTIF(D2:D5,"sound")'
for cell in store[1]:
    cell.font = Font(bold=True, name="Georgia", size=12)
    cell.fill = PatternFill("solid", fgColor="FFDDEEFF")
state = DataValidation(type="list", formula1='"sound,dented,scrap"', allow_blank=True)
state.add("D2:D20")
store.add_data_validation(state)
store.conditional_formatting.add("B2:B5", ColorScaleRule(start_type="min", start_color="FFFFAA00", end_type="max", end_color="FF00AA00"))
store.conditional_formatting.add("C2:C5", DataBarRule("min", 0, "max", 0, color="FF638EC6"))
store.conditional_formatting.add("E2:E5", IconSetRule("3TrafficLights1", "percent", [0, 33, 67]))
store.conditional_formatting.add("D2:D5", CellIsRule("equal", ['"scrap"'], fill=PatternFill(bgColor="FFFF0000")))
store["A3"].comment = Comment("Found behind the glasshouse", "Ottermere")
store["A2"].hyperlink = "https://example.org/drums"
store.freeze_panes = "B2"
store.print_title_rows = "1:1"
store.print_area = "A1:E8"
store.page_setup.orientation = "landscape"
store.oddHeader.center.text = "Drum store &D"
store.column_dimensions["A"].width = 18
store.merge_cells("G12:H13")
store["G12"] = "Gate code on the back"
pie = PieChart()
pie.title = "Volume by drum"
pie.add_data(Reference(store, min_col=5, min_row=1, max_row=5), titles_from_data=True)
pie.set_categories(Reference(store, min_col=1, min_row=2, max_row=5))
store.add_chart(pie, "G2")
square = f"{folder}/square.png"
png(square)
store.add_image(Image(square), "A10")
notes = book.create_sheet("Notes & plans")
notes["A1"] = "Tank = Fern + Reed"
notes["A2"] = "='Drum store'!E2+'Drum store'!E4"
notes.sheet_properties.tabColor = "FF00AA55"
book.defined_names.append(DefinedName("AllVolumes", attr_text="'Drum store'!$E$2:$E$5"))
book.save(f"{folder}/drum-store.xlsx")
os.remove(square)
