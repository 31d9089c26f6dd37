"""What the shop's tabs look like: own headings, own words, the same facts."""
from shop import BOOK, Col, Tab, records, scan_of

NUM, COMMA, DAY = "num", "comma", "date"
OK = {"OK": "accepted", "rej.": "rejected"}
YES = {"y": "yes", "n": "no"}
MECHANISED = {"by hand": "manual", "part": "partly mechanised"}


def scan(heading="Scan"):
    return Col(heading, "source.original", fn=lambda r, w: scan_of(r["source"]["original"]) if not w or not any(w.values()) else None)


def page(heading="p."):
    return Col(heading, "source.page")


def tail(text, n):
    return lambda r, w: r["id"][n:]


def chem(element, how=NUM):
    return Col(f"{element} [%]", f'rows[].chemistry[element="{element}"].value', how)


ELEMENTS = ["C", "Si", "Mn", "P", "S", "Cr", "Cu", "Mo", "Ni", "Al", "N", "Nb", "Ti", "V"]
used = {c["element"] for r in BOOK["material-certificate"].values() for row in r["rows"] for c in row.get("chemistry", [])}
ELEMENTS = [one for one in ELEMENTS if one in used] + sorted(used - set(ELEMENTS))


def kv(n):
    return Col(f"KV{n + 1} [J]", "rows[].impact[].values", fn=lambda r, w: sub(r, w, "impact", n), unit=None)


def sub(r, w, name, n):
    found = r["rows"][w["rows[]"]].get(name)
    if not found:
        return None
    value = found[0]["values"][n]
    return int(value.split(" ")[0])


def inrow(list_, field):
    def fn(r, w):
        found = r["rows"][w["rows[]"]].get(list_)
        return found[0].get(field) if found else None
    return fn


OTHERS = {
    "Surface/dims": ("surface and dimensions", "as ordered"),
    "MT knuckle": ("magnetic particle test of the knuckle, inside and outside", None),
    "Eddy current": ("tightness, eddy current", "EN ISO 10893-1"),
    "Flattening": ("flattening", "EN ISO 8492"),
    "Thread gauge": ("thread gauges", "ISO metric, 6g and 6H"),
}
seen = {}
for r in BOOK["material-certificate"].values():
    for row in r["rows"]:
        for one in row.get("otherTests", []):
            seen[one["test"]] = one["requirement"]
OTHERS = {head: next((test, req) for test, req in seen.items() if test[:8] == name[:8]) for head, (name, _) in OTHERS.items()}
assert len(set(t for t, _ in OTHERS.values())) == len(seen), seen

certificates = Tab(
    "3.1 certs", "material-certificate", records("material-certificate"),
    [
        Col("No.", fn=lambda r, w: int(r["id"][4:])),
        Col("Cert. no.", "number"),
        Col("Works", "mill", "firm"),
        Col("Via", "supplier", "firm"),
        Col("PO / item", "order"),
        Col("dated", "issued", DAY),
        Col("in", "received", DAY),
        Col("Signed by", "validatedBy.name"),
        Col("Heat", "rows[].heat"),
        Col("Test no.", "rows[].testUnit"),
        Col("pcs", "rows[].pieces"),
        Col("Std", "rows[].standard"),
        Col("Ed.", "rows[].edition"),
        Col("Steel", "rows[].grade"),
        Col("Cond.", "rows[].deliveryCondition"),
        Col("Product", "rows[].form", words={"dished end": "formed-end", "pl.": "plate", "forg.": "forging", "tube": "tube", "bolts": "bolting"}),
        Col("Thk [mm]", "rows[].thickness", NUM),
        Col("Dia [mm]", "rows[].diameter", NUM),
        Col("W [mm]", "rows[].width", NUM),
        Col("L [mm]", "rows[].length", NUM),
        Col("kg", "rows[].mass", COMMA, unit="kg"),
        Col("Melt", "rows[].meltingProcess"),
        *[chem(one) for one in ELEMENTS],
        Col("CEV [%]", "rows[].carbonEquivalent", NUM),
        Col("Cr+Cu+Mo+Ni [%]", "rows[].sumCrCuMoNi", NUM),
        Col("Spec. dir.", "rows[].tensile[].direction", fn=inrow("tensile", "direction"), words={"tr": "transverse", "lo": "longitudinal"}),
        Col("ReH [MPa]", "rows[].tensile[].yieldStrength", NUM, fn=inrow("tensile", "yieldStrength")),
        Col("Rm [MPa]", "rows[].tensile[].tensileStrength", NUM, fn=inrow("tensile", "tensileStrength")),
        Col("A5 [%]", "rows[].tensile[].elongation", NUM, fn=inrow("tensile", "elongation")),
        Col("KV dir.", "rows[].impact[].direction", fn=inrow("impact", "direction"), words={"tr": "transverse", "lo": "longitudinal"}),
        Col("KV at [°C]", "rows[].impact[].temperature", NUM, fn=inrow("impact", "temperature")),
        Col("Width [mm]", "rows[].impact[].specimenWidth", COMMA, fn=inrow("impact", "specimenWidth")),
        kv(0), kv(1), kv(2),
        Col("KV mean [J]", "rows[].impact[].mean", NUM, fn=inrow("impact", "mean")),
        Col("Hardness no.", "rows[].hardness[].test", fn=inrow("hardness", "test")),
        Col("HV [HV]", "rows[].hardness[].value", NUM, fn=inrow("hardness", "value")),
        *[Col(head, f'rows[].otherTests[test="{test}"].result') for head, (test, _) in OTHERS.items()],
        scan(),
        Col("Rack", fn=lambda r, w: "R2" if not w["rows[]"] else None),
    ],
    "CRT-{No.:3}", lists=("rows[]",),
    set={
        "type": "3.1", "documentStandard.standard": "EN 10204", "documentStandard.edition": "2004", "pages": "1",
        "validatedBy.function": "inspection representative, independent of manufacture", "statesCompliance": "yes",
        "rows[].tensile[].test": "{Test no.}", "rows[].tensile[].temperature": "20 °C", "rows[].tensile[].yieldKind": "ReH",
        "rows[].tensile[].gaugeLength": "5.65·√S0", "rows[].impact[].test": "{Test no.}",
        **{f'rows[].otherTests[test="{test}"].requirement': requirement for test, requirement in OTHERS.values()},
        "source.page": "1",
    },
    words={"OK": "accepted"}, title="Incoming material, job TQ423", total={"PO / item": "Total", "kg": "=SUM"},
    ignore=("Rack",), skip={"PO / item": ["Total"]})


fillers = Tab(
    "Fillers", "consumable-batch", records("consumable-batch"),
    [
        Col("Own no.", fn=tail("", 2)),
        Col("What", "type"),
        Col("Class", "designation"),
        Col("Brand", "tradeName"),
        Col("Maker", "manufacturer", "firm"),
        Col("Proc.", "processes", split=","),
        Col("FM", "fillerGroup"),
        Col("Dia [mm]", "diameter", NUM),
        Col("Batch", "batch"),
        Col("kg", "quantity", COMMA, unit="kg"),
        Col("Rec'd", "received", DAY),
        Col("Cert.", "certificate.number"),
        Col("Cert. type", "certificate.type"),
        Col("Cert. of", "certificate.issued", DAY),
        scan(), page(),
    ], "B-{Own no.}", set={"certificate.batch": "{Batch}"})

mills = Tab(
    "Mill approvals", "mill-approval", records("mill-approval", "MA-02", "MA-05"),
    [
        Col("No", fn=tail("", 3)),
        Col("Mill", "mill", "firm"),
        Col("By", "body", "firm"),
        Col("Approval no.", "certificate"),
        Col("For", "scope"),
        Col("Products", "forms", split=";", words={"dished ends": "formed-end", "bolts": "bolting"}),
        Col("EU body", "bodyInUnion"),
        Col("from", "validFrom", DAY),
        Col("to", "validTo", DAY),
        scan(), page(),
    ], "MA-{No}", words={"y": "yes"})

forming = Tab(
    "Heat treatment", "heat-treatment", records("heat-treatment"),
    [
        Col("HT", fn=tail("", 3)),
        Col("Furnace charge", "charge"),
        Col("Kind", "type"),
        Col("Instr.", "procedure"),
        Col("For parts", "parts", split=","),
        Col("in furnace", "started"),
        Col("out", "finished"),
        Col("Loaded at [°C]", "loadingTemperature", NUM),
        Col("Rate [K/h]", "heatingRate", NUM),
        Col("Soak min [°C]", "holdingLowest", NUM),
        Col("Soak max [°C]", "holdingHighest", NUM),
        Col("Soak [min]", "holdingTime", NUM),
        Col("Reading at", "readings[].time"),
        Col("TC1 [°C]", "readings[].temperatures", NUM, fn=lambda r, w: r["readings"][w["readings[]"]]["temperatures"][0]),
        Col("TC2 [°C]", "readings[].temperatures", NUM, fn=lambda r, w: r["readings"][w["readings[]"]]["temperatures"][1]),
        Col("Recorder", "instruments"),
        Col("Result", "result"),
        Col("Signed", 'signatures[role="supplier"].person'),
        Col("on", 'signatures[role="supplier"].date', DAY),
        scan(), page(),
    ], "HT-{HT}", lists=("readings[]",), words={"OK": "accepted"}, offset="+02:00")

vessel = Tab(
    "Vessel", "equipment", records("equipment"),
    [
        Col("Serial no.", "serial"),
        Col("Item", "tag"),
        Col("Built", "year"),
        Col("What", "name"),
        Col("Model", "type"),
        Col("Code", "designStandard.standard"),
        Col("Code ed.", "designStandard.edition"),
        Col("PED", "directive.inScope"),
        Col("Cat.", "directive.category"),
        Col("Mod.", "directive.module"),
        Col("Fluid", "fluid.name"),
        Col("Grp", "fluid.group"),
        Col("State", "fluid.state"),
        Col("PS [bar]", "limits.maximumAllowablePressure", NUM),
        Col("TS max [°C]", "limits.maximumAllowableTemperature", NUM),
        Col("TS min [°C]", "limits.minimumAllowableTemperature", NUM),
        Col("V [l]", "volume", NUM),
        Col("p calc [bar]", "calculationPressure", NUM),
        Col("t calc [°C]", "calculationTemperature", NUM),
        Col("PT [bar]", "testPressure", COMMA),
        Col("c [mm]", "corrosionAllowance", COMMA),
        Col("Cycles", "pressureCycles", NUM),
        Col("Flow [kg/h]", "requiredFlow", NUM),
        Col("Flow from", "requiredFlowSource"),
        Col("Empty [kg]", "emptyMass", NUM),
        scan(), page(),
    ], "{Serial no.}", words=YES)

MEASURED = 'sources[name="/measuredThickness"]'


def measured(field, said):
    def cell(record, _):
        at = record.get("sources", {}).get("/measuredThickness")
        return said(at[field]) if at else None
    return cell


parts = Tab(
    "Parts", "part", records("part"),
    [
        Col("Pos", fn=lambda r, w: int(r["id"][1:])),
        Col("Description", "name"),
        Col("Sort", "role", words={"shell": "shell-course", "neck": "nozzle-neck", "blind": "blind-flange"}),
        Col("Dwg", "drawing"),
        Col("p-bearing", "pressureBearing"),
        Col("Qty", "quantity"),
        Col("Mat. std", "material.standard"),
        Col("Mat. ed.", "material.edition"),
        Col("Material", "material.grade"),
        Col("Opt.", "material.options"),
        Col("Semi-finished", "material.form", words={"dished end": "formed-end", "bolts": "bolting"}),
        Col("t nom [mm]", "nominalThickness", COMMA),
        Col("t min [mm]", "minimumThickness", COMMA),
        Col("t meas. [mm]", "measuredThickness", COMMA, split=";"),
        Col("t meas. on", f"{MEASURED}.original", fn=measured("original", scan_of)),
        Col("t meas. p.", f"{MEASURED}.page", fn=measured("page", int)),
        Col("Undertol. [mm]", "thicknessUndertolerance", COMMA),
        Col("Corr. [mm]", "corrosionAllowance", COMMA),
        Col("ID [mm]", "insideDiameter", COMMA),
        Col("OD [mm]", "outsideDiameter", COMMA),
        Col("Long [mm]", "length", COMMA),
        Col("R [mm]", "crownRadius", COMMA),
        Col("r [mm]", "knuckleRadius", COMMA),
        Col("z", "weldCoefficient", COMMA),
        Col("Cert.", "requiredCertificateType"),
        Col("Made by", "madeBy", "firm"),
        scan(), page(),
    ], "P{Pos:2}", words=YES)

marks = Tab(
    "Marks", "piece-mark", records("piece-mark"),
    [
        Col("M", fn=tail("", 3)),
        Col("Pos", "part", fn=lambda r, w: int(r["part"][1:]), form="P{Pos:2}"),
        Col("Stamped", "mark"),
        Col("Cert", fn=lambda r, w: r["certificateRow"][4:7]),
        Col("Heat", "certificateRow", fn=lambda r, w: r["certificateRow"].split("#")[1], form="CRT-{Cert}#{}"),
        Col("Mill marking", "pieceNumber"),
        Col("Cut on", "cut", DAY),
        Col("pcs", "pieces"),
        Col("m² [m²]", "area", COMMA),
        Col("Cut length [mm]", "length", COMMA),
        Col("Moved by", "transfers[].by"),
        Col("moved", "transfers[].date", DAY),
        Col("Seen by", "transfers[].witness"),
        scan(), page(),
    ], "PM-{M}", lists=("transfers[]",),
    set={"transfers[].from": "{Mill marking}", "transfers[].to": "{Stamped}", "transfers[].method": "hard stamp"})


def two(name, n):
    return lambda r, w: r[name][n] if n < len(r[name]) else None


def extent(method):
    found = lambda r, w: next((one["extent"] for one in r["requiredTests"] if one["method"] == method), None)
    return Col(f"{method} [%]", f'requiredTests[method="{method}"].extent', NUM, fn=found)


def crossed(seam):
    def found(r, w):
        return next((one["at"] for one in r.get("crossings", []) if one["joint"] == seam), None)
    return Col(f"{seam} at [mm]", f'crossings[joint="{seam}"].at', COMMA, fn=found)


def basis(vt):
    return lambda r, w: next((one["basis"] for one in r["requiredTests"] if (one["method"] == "VT") == vt), None)


joints = Tab(
    "Seams", "joint", records("joint"),
    [
        Col("Seam", fn=tail("", 0)),
        Col("Stamp", "mark"),
        Col("Kind", "type"),
        Col("Runs", "role", words={"long.": "longitudinal", "circ.": "circumferential"}),
        Col("Part a", "parts", fn=two("parts", 0)),
        Col("Part b", "parts", fn=two("parts", 1)),
        Col("t a [mm]", "thicknesses", COMMA, fn=two("thicknesses", 0)),
        Col("t b [mm]", "thicknesses", COMMA, fn=two("thicknesses", 1)),
        Col("s [mm]", "depositedThickness", COMMA),
        Col("OD [mm]", "outsideDiameter", COMMA),
        Col("L [mm]", "length", COMMA),
        Col("Detail", "detail"),
        Col("Proc.", "processes", split=","),
        Col("Pos.", "positions", split=","),
        Col("WPS", "weldingProcedure"),
        Col("Dwg", "drawing"),
        Col("z", "weldCoefficient", COMMA),
        Col("QL", "qualityLevel"),
        *[extent(method) for method in ("VT", "RT", "MT", "PT")],
        Col("VT per", fn=basis(True)),
        Col("Tests per", fn=basis(False)),
        *[crossed(seam) for seam in ("L1", "L2")],
        Col("PWHT", "postWeldHeatTreatment"),
        scan(), page(),
    ], "{Seam}", set={"pressureBearing": "yes", **{f'requiredTests[method="{m}"].basis': "{VT per}" if m == "VT" else "{Tests per}" for m in ("VT", "RT", "MT", "PT")}},
    words=YES)


def revisions(*more, first="Rev."):
    return [
        Col(first, "revisions[].revision"),
        Col("of", "revisions[].date", DAY),
        Col("Status", "revisions[].status", words={"for constr.": "for-construction", "old": "superseded"}),
        Col("Why", "revisions[].reason"),
        Col("Prep.", "revisions[].preparedBy"),
        Col("Chk.", "revisions[].checkedBy"),
        Col("Appr.", "revisions[].approvedBy"),
        Col("appr. on", "revisions[].approved", DAY),
        Col("Sh.", "revisions[].sheets"),
        *more,
    ]


def design():
    return [
        Col("Serial no.", "designData.serial"),
        Col("Built", "designData.year"),
        Col("PS [bar]", "designData.maximumAllowablePressure", NUM),
        Col("TS max [°C]", "designData.maximumAllowableTemperature", NUM),
        Col("TS min [°C]", "designData.minimumAllowableTemperature", NUM),
        Col("V [l]", "designData.volume", NUM),
        Col("PT [bar]", "designData.testPressure", COMMA),
        Col("Grp", "designData.fluidGroup"),
        Col("Cat.", "designData.category"),
        Col("Mod.", "designData.module"),
        Col("Body", "designData.bodyNumber"),
    ]


drawings = Tab(
    "Drawings", "drawing", records("drawing"),
    [
        Col("Dwg", fn=tail("", 4)),
        Col("Drawing no.", "number"),
        Col("Shows", "title"),
        Col("Sort", "type"),
        *revisions(),
        Col("Parts", "parts", split=","),
        Col("Seams", "joints", split=","),
        *design(),
        scan(), page(),
    ], "DRG-{Dwg}", lists=("revisions[]",))

documents = Tab(
    "Documents", "document", records("document"),
    [
        Col("Doc", fn=tail("", 4)),
        Col("Doc. no.", "number"),
        Col("Subject", "title"),
        Col("Sort", "type"),
        *revisions(),
        scan(), page("from p."), Col("to p.", "source.to"),
    ], "DOC-{Doc}", lists=("revisions[]",), set={"language": "en"})

log = Tab(
    "Log", "weld-log", records("weld-log"),
    [
        Col("Seam", "joint", fn=lambda r, w: r["joint"]),
        Col("WPS", "weldingProcedure"),
        Col("Fitted", "fitUp.date", DAY),
        Col("Fit by", "fitUp.by"),
        Col("Fit ok", "fitUp.accepted"),
        Col("Gap [mm]", "fitUp.gap", COMMA),
        Col("Hi-lo [mm]", "fitUp.offset", COMMA),
        Col("Run", "runs[].layer"),
        Col("Proc.", "runs[].process"),
        Col("Pos.", "runs[].position"),
        Col("Welder", "runs[].welders", fn=lambda r, w: r["runs"][w["runs[]"]]["welders"][0]),
        Col("Begun", "runs[].date"),
        Col("Ended", "runs[].finished"),
        Col("Wire", "runs[].batches", fn=lambda r, w: r["runs"][w["runs[]"]]["batches"][0][2:], form="B-{}"),
        Col("Gas", "runs[].batches", fn=lambda r, w: r["runs"][w["runs[]"]]["batches"][1][2:], form="B-{}"),
        Col("T0 [°C]", "runs[].preheat", NUM),
        Col("Ti [°C]", "runs[].interpass", NUM),
        Col("I [A]", "runs[].current", NUM),
        Col("U [V]", "runs[].voltage", NUM),
        Col("v [mm/min]", "runs[].travelSpeed", NUM),
        Col("Q [kJ/mm]", "runs[].heatInput", NUM),
        Col("Meter", "runs[].instruments", split=","),
        Col("Welder signed", 'signatures[role="welder"].person'),
        Col("w. on", 'signatures[role="welder"].date', DAY),
        Col("Coord. signed", 'signatures[role="welding coordinator"].person'),
        Col("c. on", 'signatures[role="welding coordinator"].date', DAY),
        scan(), page(),
    ], "WL-{Seam}", lists=("runs[]",), words={"y": "yes"}, offset="+02:00", title="Weld log TQ423")


def span(name, path, unit, how=NUM):
    return [Col(f"{name} min [{unit}]", f"{path}.minimum", how), Col(f"{name} max [{unit}]", f"{path}.maximum", how)]


wps = Tab(
    "WPS", "welding-procedure", records("welding-procedure"),
    [
        Col("WPS", fn=tail("", 4)),
        Col("For", "title"),
        Col("Rev.", "revisions[].revision", first=True),
        *revisions()[1:],
        Col("WPQR", "revisions[].qualifications", split=","),
        Col("Proc.", "revisions[].processes", split=","),
        Col("Mech.", "revisions[].mechanisation", words=MECHANISED),
        Col("Joints", "revisions[].jointTypes", split=","),
        Col("Group", "revisions[].materialGroups", split=","),
        *span("t", "revisions[].thickness", "mm"),
        Col("D min [mm]", "revisions[].outsideDiameter.minimum", NUM),
        Col("Pos.", "revisions[].positions", split=","),
        Col("Detail", "revisions[].details", split=","),
        *span("Gap", "revisions[].gap", "mm"),
        Col("Filler", "revisions[].fillers", split=";"),
        Col("Gas", "revisions[].shieldingGas"),
        Col("Pol.", "revisions[].current"),
        Col("Mode", "revisions[].transferModes", split=","),
        *span("Q", "revisions[].heatInput", "kJ/mm"),
        Col("T0 [°C]", "revisions[].preheat", NUM),
        Col("Ti [°C]", "revisions[].interpass", NUM),
        Col("PWHT", "revisions[].postWeldHeatTreatment"),
        Col("Run", "revisions[].runs[].run"),
        Col("Run proc.", "revisions[].runs[].process"),
        Col("Run mode", "revisions[].runs[].transferMode"),
        Col("Wire [mm]", "revisions[].runs[].fillerDiameter", NUM),
        *span("I", "revisions[].runs[].current", "A"),
        *span("U", "revisions[].runs[].voltage", "V"),
        *span("v", "revisions[].runs[].travelSpeed", "mm/min"),
        scan(), page(),
    ], "WPS-{WPS}", lists=("revisions[]", "revisions[].runs[]"), words=YES)

wpqr = Tab(
    "WPQR", "procedure-qualification", records("procedure-qualification"),
    [
        Col("WPQR", fn=tail("", 5)),
        Col("Cert. no.", "certificate"),
        Col("Std", "standard.standard"),
        Col("Ed.", "standard.edition"),
        Col("Level", "level"),
        Col("Proc.", "processes", split=","),
        Col("Mech.", "mechanisation", words=MECHANISED),
        Col("Joint", "jointType"),
        Col("Piece", "product"),
        Col("Group", "materialGroup"),
        Col("Steel", "grade"),
        Col("t [mm]", "testThickness", NUM),
        Col("D [mm]", "testDiameter", NUM),
        Col("Runs", "layers", words={"SR": "single", "MR": "multi"}),
        Col("Pos.", "positions", split=","),
        Col("Detail", "detail"),
        Col("Filler", "fillers", split=";"),
        Col("Gas", "shieldingGas"),
        Col("Pol.", "current"),
        Col("Mode", "transferModes", split=","),
        Col("Q [kJ/mm]", "heatInput", NUM),
        Col("T0 [°C]", "preheat", NUM),
        Col("Ti [°C]", "interpass", NUM),
        Col("PWHT", "postWeldHeatTreatment"),
        Col("KV done", "impactTested"),
        Col("HV done", "hardnessTested"),
        Col("Tested", "testDate", DAY),
        Col("By", "approvedBy", "firm"),
        Col("approved", "approved", DAY),
        Col("No.", "tests[].test"),
        Col("Test", "tests[].type"),
        Col("Asked", "tests[].requirement"),
        Col("KV at [°C]", "tests[].temperature", NUM),
        Col("Found", "tests[].value", split=";"),
        Col("Result", "tests[].result"),
        Col("r: proc.", "range.processes", split=","),
        Col("r: joints", "range.jointTypes", split=","),
        Col("r: group", "range.materialGroups", split=","),
        *span("r: t", "range.thickness", "mm"),
        Col("r: D min [mm]", "range.outsideDiameter.minimum", NUM),
        Col("r: pos.", "range.positions", split=","),
        *span("r: Q", "range.heatInput", "kJ/mm"),
        Col("r: T0 [°C]", "range.preheat", NUM),
        Col("r: Ti [°C]", "range.interpass", NUM),
        scan(), page(),
    ], "WPQR-{WPQR}", lists=("tests[]",), words={**YES, "OK": "accepted"})

welders = Tab(
    "Welders", "welder-qualification", records("welder-qualification", "WQ-03-1", "WQ-03-2", "WQ-07-1", "WQ-07-2"),
    [
        Col("Welder", "person", fn=lambda r, w: r["person"]),
        Col("No.", fn=lambda r, w: r["id"][3:]),
        Col("Cert. no.", "certificate"),
        Col("Std", "standard.standard"),
        Col("Ed.", "standard.edition"),
        Col("FM", "fillerGroup"),
        Col("Filler", "fillerType"),
        Col("Suppl. fillet", "supplementaryFillet"),
        Col("Designation", "designation"),
        Col("Proc.", "process"),
        Col("Mode", "transferModes", split=","),
        Col("Piece", "product"),
        Col("Weld", "weldType"),
        Col("t [mm]", "thickness", COMMA),
        Col("D [mm]", "outsideDiameter", COMMA),
        Col("Pos.", "positions", split=","),
        Col("Detail", "detail"),
        Col("r: welds", "range.weldTypes", split=","),
        Col("r: FM", "range.fillerGroups", split=","),
        Col("r: proc.", "range.processes", split=","),
        Col("r: pieces", "range.products", split=","),
        *span("r: t", "range.thickness", "mm", COMMA),
        Col("r: D min [mm]", "range.outsideDiameter.minimum", COMMA),
        Col("r: pos.", "range.positions", split=","),
        Col("r: details", "range.details", split=","),
        Col("tested", "testDate", DAY),
        Col("Examiner", "examiner"),
        Col("Body", "body", "firm"),
        Col("3rd party", "thirdPartyApproval"),
        Col("Route", "route"),
        Col("valid to", "validTo", DAY),
        Col("conf. on", "confirmations[].date", DAY),
        Col("conf. by", "confirmations[].by"),
        Col("conf. with", "confirmations[].evidence"),
        scan(), page(),
    ], "WQ-{No.}", lists=("confirmations[]",), words=YES)

instructions = Tab(
    "Instructions", "procedure", records("procedure", "PRC-FORM", "PRC-HYD", "PRC-CLEAN", "PRC-COAT", "PRC-SV"),
    [
        Col("Short", fn=tail("", 4)),
        Col("Instr. no.", "number"),
        Col("For", "title"),
        Col("Sort", "type"),
        *revisions(),
        scan(), page(),
    ], "PRC-{Short}", lists=("revisions[]",))

plate = Tab(
    "Test plates", "production-test", records("production-test"),
    [
        Col("TP", fn=tail("", 3)),
        Col("Stamp", "mark"),
        Col("Seams", "joints", split=","),
        Col("WPS", "weldingProcedure"),
        Col("Welders", "welders", split=","),
        Col("Of plates", "certificateRows", split=","),
        Col("Welded", "welded", DAY),
        Col("Lab", "laboratory", "firm"),
        Col("Lab report", "report"),
        Col("of", "date", DAY),
        Col("Tensile no.", "tensile[].test", fn=lambda r, w: nth(r, "tensile", w, "test")),
        Col("Dir.", "tensile[].direction", fn=lambda r, w: nth(r, "tensile", w, "direction")),
        Col("at [°C]", "tensile[].temperature", NUM, fn=lambda r, w: nth(r, "tensile", w, "temperature")),
        Col("Rm [MPa]", "tensile[].tensileStrength", NUM, fn=lambda r, w: nth(r, "tensile", w, "tensileStrength")),
        Col("broke in", "tensile[].breakLocation", fn=lambda r, w: nth(r, "tensile", w, "breakLocation")),
        Col("KV no.", "impact[].test"),
        Col("Notch in", "impact[].location"),
        Col("KV at [°C]", "impact[].temperature", NUM),
        Col("KV width [mm]", "impact[].specimenWidth", COMMA),
        *[Col(f"KV{n + 1} [J]", "impact[].values", NUM, fn=lambda r, w, n=n: r["impact"][w["impact[]"]]["values"][n]) for n in range(3)],
        Col("KV mean [J]", "impact[].mean", NUM),
        Col("Also", "otherTests[].test", fn=lambda r, w: nth(r, "otherTests", w, "test")),
        Col("Asked", "otherTests[].requirement", fn=lambda r, w: nth(r, "otherTests", w, "requirement")),
        Col("Found", "otherTests[].result", fn=lambda r, w: nth(r, "otherTests", w, "result")),
        Col("All", "result"),
        Col("Signed", 'signatures[role="laboratory"].person'),
        Col("on", 'signatures[role="laboratory"].date', DAY),
        scan(), page(),
    ], "TP-{TP}", lists=("impact[]",), words={"OK": "accepted"})


def nth(r, name, w, field):
    at = next(iter(w.values()))
    return r[name][at].get(field) if at < len(r[name]) else None


repairs = Tab(
    "Repairs", "repair", records("repair"),
    [
        Col("Repair", fn=tail("", 0)),
        Col("Seam", "joint"),
        Col("Rejected in", "rejected"),
        Col("Cycle", "cycle"),
        Col("Cause", "cause"),
        Col("from [mm]", "from", NUM),
        Col("to [mm]", "to", NUM),
        Col("deep [mm]", "depth", COMMA),
        Col("WPS", "weldingProcedure"),
        Col("Proc.", "process"),
        Col("Welder", "welders", split=","),
        Col("Wire, gas", "batches", split=","),
        Col("When", "date"),
        Col("PT of groove", "excavationTest"),
        Col("NCR", "nonconformity"),
        Col("Welder signed", 'signatures[role="welder"].person'),
        Col("w. on", 'signatures[role="welder"].date', DAY),
        Col("Coord. signed", 'signatures[role="welding coordinator"].person'),
        Col("c. on", 'signatures[role="welding coordinator"].date', DAY),
        scan(), page(),
    ], "{Repair}", offset="+02:00")


def piece(list_, field):
    """Of rows of a list in a row: its indications."""
    def fn(r, w):
        inner = r["rows"][w["rows[]"]].get(list_, [])
        at = w.get(f"rows[].{list_}[]", 0)
        return inner[at].get(field) if at < len(inner) else None
    return fn


ndt = Tab(
    "Reports", "ndt-report", records("ndt-report"),
    [
        Col("Report", fn=tail("", 0)),
        Col("Method", "method"),
        Col("tested", "date"),
        Col("Dwg", "drawing"),
        Col("QL", "qualityLevel"),
        Col("Instr.", "procedure"),
        Col("Accept. std", "acceptance.standard"),
        Col("Accept. ed.", "acceptance.edition"),
        Col("AL", "acceptance.level"),
        Col("How", "technique"),
        Col("Seen by", "seenBy"),
        Col("T surf. [°C]", "surfaceTemperature", NUM),
        Col("Light [lx]", "illuminance", NUM),
        Col("Field ways", "directions", fn=lambda r, w: r.get("directions")),
        Col("H [kA/m]", "fieldStrength", COMMA),
        Col("Dwell [min]", "penetrationTime", NUM),
        Col("Dev. [min]", "developmentTime", NUM),
        Col("UT level", "ultrasonic.testingLevel"),
        Col("Probes [MHz]", "ultrasonic.frequencies", COMMA, split=";"),
        Col("Transfer [dB]", "ultrasonic.transferCorrection", NUM),
        Col("Check [dB]", "ultrasonic.drift", NUM),
        Col("Equipment", "instruments", split=","),
        Col("Class", "radiography.techniqueClass"),
        Col("Tube", "radiography.source"),
        Col("Focus [mm]", "radiography.sourceSize", COMMA),
        Col("FFD [mm]", "radiography.distance", NUM),
        Col("Source at", "radiography.sourcePlace"),
        Col("Film", "radiography.filmClass"),
        Col("Tester", "operator"),
        Col("Level 3", "reviewer"),
        Col("Lab", "laboratory", "firm"),
        Col("Row", "rows[].row", first=True),
        Col("Seam", "rows[].joint", first=True),
        Col("Rep.", "rows[].repair"),
        Col("Film no.", "rows[].film"),
        Col("from [mm]", "rows[].from", NUM),
        Col("to [mm]", "rows[].to", NUM),
        Col("L [mm]", "rows[].length", NUM),
        Col("IQI", "rows[].wire"),
        Col("Density [1]", "rows[].density", COMMA, split=";"),
        Col("Result", "rows[].result"),
        Col("Ind.", "rows[].indications[].indication", fn=piece("indications", "indication")),
        Col("What", "rows[].indications[].type", fn=piece("indications", "type")),
        Col("at [mm]", "rows[].indications[].at", NUM, fn=piece("indications", "at")),
        Col("Size [mm]", "rows[].indications[].size", COMMA, fn=piece("indications", "size")),
        Col("Long [mm]", "rows[].indications[].length", NUM, fn=piece("indications", "length")),
        Col("Verdict", "rows[].indications[].verdict", fn=piece("indications", "verdict")),
        Col("Signed", 'signatures[role="testing"].person'),
        Col("on", 'signatures[role="testing"].date', DAY),
        scan(), page(),
    ], "{Report}", lists=("rows[]", "rows[].indications[]"), words=OK, offset="+02:00", title="NDT reports, TQ423")

ncr = Tab(
    "NCR", "nonconformity-report", records("nonconformity-report"),
    [
        Col("NCR", fn=tail("", 4)),
        Col("What", "title"),
        Col("State", "state"),
        Col("About", "affected", "bare", split=","),
        Col("Should be", "requirement"),
        Col("Found", "found"),
        Col("by", "foundBy"),
        Col("on", "raised", DAY),
        Col("pressure", "pressureRelated"),
        Col("Cause", "cause"),
        Col("At once", "containment"),
        Col("Decision", "disposition"),
        Col("because", "reason"),
        Col("Done", "correction"),
        Col("done by", "correctedBy"),
        Col("Coord.", 'approvals[role="welding coordinator"].person'),
        Col("c. on", 'approvals[role="welding coordinator"].date', DAY),
        Col("Body", 'approvals[role="inspection body"].person'),
        Col("b. on", 'approvals[role="inspection body"].date', DAY),
        Col("Shown by", "verification", "bare", split=","),
        Col("closed by", "closedBy"),
        Col("closed", "closed", DAY),
        Col("QC", 'signatures[role="quality control"].person'),
        Col("QC on", 'signatures[role="quality control"].date', DAY),
        scan(), page(),
    ], "NCR-{NCR}", words=YES)

dims = Tab(
    "Dimensions", "dimension-check", records("dimension-check"),
    [
        Col("Sheet", fn=tail("", 4)),
        Col("What", "title"),
        Col("on", "date", DAY),
        Col("by", "by"),
        Col("Dwg", "drawing"),
        Col("Tools", "instruments", split=","),
        Col("Feature", "rows[].feature"),
        Col("Pos", "rows[].part"),
        Col("Seam", "rows[].joint"),
        Col("Sort", "rows[].shape"),
        Col("Nominal [mm]", "rows[].nominal", COMMA),
        Col("min. [mm]", "rows[].minimum", COMMA),
        Col("max. [mm]", "rows[].maximum", COMMA),
        *[Col(f"Is {n + 1} [mm]", "rows[].measured", COMMA, nth=n) for n in range(5)],
        Col("ok", "rows[].result"),
        Col("All", "result"),
        Col("QC", 'signatures[role="quality control"].person'),
        Col("QC on", 'signatures[role="quality control"].date', DAY),
        scan(), page(),
    ], "DIM-{Sheet}", lists=("rows[]",), words=OK, title="Dimensional checks", total={"Sheet": "3 sheets"}, skip={"Sheet": ["3 sheets"]})
assert max(len(row["measured"]) for r in BOOK["dimension-check"].values() for row in r["rows"]) <= 5


def gauge(n, field):
    return lambda r, w: r["gauges"][n].get(field)


coats = Tab(
    "Coats", "coating-report", records("coating-report"),
    [
        Col("Coat", fn=tail("", 0)),
        Col("Report", "report"),
        Col("Surface", "surface"),
        Col("Pos", "parts", split=","),
        Col("Instr.", "procedure"),
        Col("on", "date", DAY),
        Col("by", "by"),
        Col("Tools", "instruments", split=","),
        Col("Blasted", "prepared"),
        Col("Grade", "preparation"),
        Col("Grade asked", "preparationAsked"),
        Col("Layer", "layers[].layer"),
        Col("Paint", "layers[].product"),
        Col("Batch", "layers[].batch"),
        Col("applied", "layers[].applied"),
        Col("Steel [°C]", "layers[].surfaceTemperature", NUM),
        Col("Air [°C]", "layers[].airTemperature", NUM),
        Col("RH [%]", "layers[].humidity", NUM),
        Col("Dew [°C]", "layers[].dewPoint", NUM),
        Col("Nominal [µm]", "nominal", NUM),
        Col("min. [µm]", "minimum", NUM),
        Col("max. [µm]", "maximum", NUM),
        Col("Reads asked", "readingsAsked", fn=lambda r, w: r.get("readingsAsked")),
        Col("Pores by", "poreTest"),
        Col("Pores", "pores", fn=lambda r, w: r.get("pores")),
        Col("All", "result"),
        Col("QC", 'signatures[role="quality control"].person'),
        Col("QC on", 'signatures[role="quality control"].date', DAY),
        scan(), page(),
    ], "{Coat}", lists=("layers[]",), words=OK, offset="+02:00")

film = Tab(
    "Film", "coating-report", records("coating-report"),
    [
        Col("Coat", fn=tail("", 0)),
        Col("Zone", "zones[].zone"),
        Col("Read [µm]", "zones[].readings", COMMA, split=";"),
        Col("least [µm]", "zones[].least", NUM),
        Col("mean [µm]", "zones[].mean", NUM),
        Col("most [µm]", "zones[].greatest", NUM),
    ], "{Coat}", lists=("zones[]",))

test = Tab(
    "Pressure test", "pressure-test", records("pressure-test"),
    [
        Col("Test", fn=tail("", 0)),
        Col("Vessel", "equipment"),
        Col("Day", "date", DAY),
        Col("Medium", "medium"),
        Col("Instr.", "procedure"),
        Col("Dwg", "drawing"),
        Col("Plate no.", "serial"),
        Col("p req. [bar]", "requiredPressure", COMMA),
        Col("PT [bar]", "testPressure", COMMA),
        *[col for n, g in enumerate("AB") for col in (
            Col(f"Gauge {g}", f'gauges[gauge="{g}"].instrument', fn=gauge(n, "instrument")),
            Col(f"{g} range [bar]", f'gauges[gauge="{g}"].range', NUM, fn=gauge(n, "range")),
            Col(f"{g} class [%]", f'gauges[gauge="{g}"].accuracyClass', COMMA, fn=gauge(n, "accuracyClass")),
            Col(f"{g} reads to [bar]", f'gauges[gauge="{g}"].resolution', COMMA, fn=gauge(n, "resolution")),
            Col(f"{g} height [mm]", f'gauges[gauge="{g}"].elevation', NUM, fn=gauge(n, "elevation")),
        )],
        Col("Thermometer", "thermometers", split=","),
        Col("Pump off", "pumpIsolated"),
        Col("Hold from", "holdStart"),
        Col("Hold to", "holdEnd"),
        Col("Pumped [l]", "pumpedVolume", COMMA),
        Col("Looked at [bar]", "visualExamination.pressure", NUM),
        Col("looked by", "visualExamination.by"),
        Col("looked on", "visualExamination.date"),
        Col("seen", "visualExamination.result"),
        Col("Set [mm]", "permanentSet", COMMA),
        Col("Painted", "coated"),
        Col("Result", "result"),
        *[col for head, role in (("QC", "quality control"), ("Body", "inspection body"), ("Client", "client")) for col in (
            Col(head, f'signatures[role="{role}"].person'), Col(f"{head} on", f'signatures[role="{role}"].date', DAY))],
        scan(), page("from p."), Col("to p.", "source.to"),
    ], "{Test}", words={**OK, **YES}, offset="+02:00")

readings = Tab(
    "Readings", "pressure-test", records("pressure-test"),
    [
        Col("Test", fn=tail("", 0)),
        Col("Clock", "readings[].time"),
        Col("A [bar]", "readings[].gaugeA", NUM),
        Col("B [bar]", "readings[].gaugeB", NUM),
        Col("Water [°C]", "readings[].waterTemperature", COMMA),
        Col("Wall [°C]", "readings[].metalTemperature", COMMA),
    ], "{Test}", lists=("readings[]",), offset="+02:00")

tools = Tab(
    "Gauges", "instrument", records("instrument", "PG-03", "TH-02", "TR-11", "UT-03"),
    [
        Col("Tool", fn=tail("", 0)),
        Col("What", "name"),
        Col("Sort", "type"),
        Col("Make", "manufacturer"),
        Col("Maker's no.", "serial"),
        Col("from", "range.minimum", "unit"),
        Col("to", "range.maximum", "unit"),
        Col("Class", "accuracyClass", "unit"),
        Col("Div.", "division", "unit"),
        Col("Reads to", "resolution", "unit"),
        Col("Repeats", "repeatability", "unit"),
        Col("Error", "maximumError", "unit"),
        Col("Cal. cert.", "calibrations[].certificate"),
        Col("cal. on", "calibrations[].date", DAY),
        Col("good to", "calibrations[].validTo", DAY),
        Col("Cal. lab", "calibrations[].laboratory", "firm"),
        Col("found", "calibrations[].asFound"),
        Col("left", "calibrations[].asLeft"),
        Col("Unc.", "calibrations[].uncertainty", "unit"),
        Col("Lab sign.", 'signatures[role="laboratory"].person'),
        scan(), page(),
    ], "{Tool}", lists=("calibrations[]",), set={'signatures[role="laboratory"].row': "{Cal. cert.}", 'signatures[role="laboratory"].date': "{cal. on}"})
valve = Tab(
    "Safety valve", "safety-valve", records("safety-valve"),
    [
        Col("Valve", fn=tail("", 3)),
        Col("On vessel", "equipment"),
        Col("Tag", "tag"),
        Col("Serial", "serial"),
        Col("Maker", "manufacturer", "firm"),
        Col("Model", "model"),
        Col("Size", "size"),
        Col("Cat.", "category"),
        Col("Body", "bodyNumber"),
        Col("d0 [mm]", "flowDiameter", NUM),
        Col("A0 [mm²]", "flowArea", COMMA),
        Col("Kdr [1]", "coefficient", COMMA),
        Col("Set [bar]", "setPressure", NUM),
        Col("Over [%]", "overpressure", NUM),
        Col("Back [bar]", "backPressure", NUM),
        Col("Fluid", "medium.name"),
        Col("State", "medium.state"),
        Col("T [°C]", "medium.temperature", NUM),
        Col("M [kg/kmol]", "medium.molarMass", COMMA),
        Col("k [1]", "medium.isentropicExponent", COMMA),
        Col("Z [1]", "medium.compressibilityFactor", COMMA),
        Col("p amb [bar(a)]", "atmosphericPressure", COMMA),
        Col("Qm [kg/h]", "certifiedCapacity", NUM),
        Col("Cert.", "certificate.number"),
        Col("cert. of", "certificate.date", DAY),
        Col("cert. by", "certificate.body", "firm"),
        Col("Type exam.", "certificate.typeExamination"),
        Col("Plate: serial", "plate.serial"),
        Col("Plate: set [bar]", "plate.setPressure", NUM),
        Col("Plate: Qm [kg/h]", "plate.capacity", NUM),
        Col("Bench on", "bench.date", DAY),
        Col("Instr.", "bench.procedure"),
        Col("Gauge", "bench.instrument"),
        Col("with", "bench.medium"),
        Col("Shot", "bench.readings[].number"),
        Col("pops [bar]", "bench.readings[].pop", COMMA),
        Col("shuts [bar]", "bench.readings[].reseat", COMMA),
        Col("Seat at [bar]", "bench.seatTestPressure", COMMA),
        Col("Seat", "bench.seatTightness"),
        Col("Seal", "bench.sealNumber"),
        Col("Set by", "bench.tester"),
        Col("Signed", 'signatures[role="supplier"].person'),
        Col("on", 'signatures[role="supplier"].date', DAY),
        scan(), page(),
    ], "SV-{Valve}", lists=("bench.readings[]",), words=OK)


def limits(head=""):
    return [
        Col("PS [bar]", "maximumAllowablePressure", NUM),
        Col("TS max [°C]", "maximumAllowableTemperature", NUM),
        Col("TS min [°C]", "minimumAllowableTemperature", NUM),
        Col("V [l]", "volume", NUM),
        Col("Grp", "fluidGroup"),
        Col("Cat.", "category"),
        Col("Mod.", "module"),
        Col("Body", "bodyNumber"),
        Col("PT [bar]", "testPressure", COMMA),
        Col("PT on", "testDate", DAY),
    ]


nameplate = Tab(
    "Plate", "nameplate", records("nameplate"),
    [
        Col("Plate", fn=tail("", 3)),
        Col("Vessel", "equipment"),
        Col("Maker", "makerName"),
        Col("Address", "makerAddress"),
        Col("Type", "type"),
        Col("Serial", "serial"),
        Col("Built", "year"),
        *limits(),
        Col("Set [bar]", "setPressure", NUM),
        Col("CE", "ceMark"),
        Col("fixed", "fixed", DAY),
        Col("Photo", "photograph", fn=lambda r, w: scan_of(r["photograph"])),
        scan(), page(),
    ], "NP-{Plate}", words=YES)

body = Tab(
    "Body", "body-certificate", records("body-certificate"),
    [
        Col("No.", fn=tail("", 3)),
        Col("Vessel", "equipment"),
        Col("Cert. no.", "number"),
        Col("Cert. type", "type"),
        Col("By", "body", "firm"),
        *limits(),
        Col("Serial", "serial"),
        Col("Built", "year"),
        Col("Dwgs", "drawings", split=","),
        Col("of", "date", DAY),
        Col("valid to", "validTo", DAY),
        Col("by", "signatory"),
        Col("Signed", 'signatures[role="inspection body"].person'),
        Col("on", 'signatures[role="inspection body"].date', DAY),
        scan(), page(),
    ], "BC-{No.}", words=YES)


def party(head, name):
    of = lambda field: lambda r, w: next((one.get(field) for one in r["points"] if one["party"] == name), None)
    return [
        Col(f"{head}", f'points[party="{name}"].point', fn=of("point"), words={"P": "perform", "A": "approve", "R": "review", "W": "witness", "H": "hold"}),
        Col(f"{head} did", f'points[party="{name}"].outcome', fn=of("outcome")),
        Col(f"{head} by", f'points[party="{name}"].person', fn=of("person")),
        Col(f"{head} on", f'points[party="{name}"].date', DAY, fn=of("date")),
    ]


# The maker of this book adopts the recomputation: the plan names what is signed for, not papers that are not there.
NOT_OWED = ("test-stress", "relief-capacity", "pressure-hold", "hold-drift")
ADOPTED = {
    f"calculation-sheet:{r['id']}": None if r["calculation"] in NOT_OWED else f"CS-{r['subject'].split(':')[1]}-{r['calculation'].upper()}"
    for r in BOOK["calculation-sheet"].values()
}


def papers(r, w):
    return [ADOPTED.get(one, one) for one in r.get("records", []) if ADOPTED.get(one, one)] or None


itp = Tab(
    "ITP", "inspection-step", records("inspection-step"),
    [
        Col("Step", "step", fn=lambda r, w: r["step"]),
        Col("Phase", "phase"),
        Col("Activity", "activity"),
        Col("Criterion", "criterion"),
        Col("After", "predecessors", fn=lambda r, w: [one[4:] for one in r.get("predecessors", [])], split=",", form="ITP-{}"),
        Col("Instr.", "procedure", "bare"),
        *party("Maker", "maker"), *party("Body", "inspection body"), *party("Client", "client"),
        Col("Papers", "records", "bare", split=",", fn=papers),
        Col("Told", "notice", DAY),
        Col("Planned", "planned", DAY),
        Col("Done", "done", DAY),
        scan(), page(),
    ], "ITP-{Step:3}", title="Inspection and test plan TQ423, completed")

BOOKS = {
    "certificates": ("openpyxl", [certificates, fillers, mills, forming]),
    "parts": ("calc", [vessel, drawings, documents, parts, marks, joints]),
    "weld-log": ("xlsxwriter", [log, wps, wpqr, welders, instructions, plate, repairs]),
    "ndt": ("openpyxl", [ndt, ncr]),
    "dimensions": ("xlsxwriter", [dims, coats, film, itp]),
    "valve-and-test": ("calc", [tools, test, readings, valve, nameplate, body]),
}
