#!/usr/bin/env python3
"""Makes the faces of papers from the faces of pages.

The PDF renderer reads TrueType files of one weight each and knows no font features, so every
weight becomes a file of its own, in which figures of equal width are the figures there are.
Needs fonttools and brotli (pip install fonttools brotli). Run from the folder "web".
"""

from pathlib import Path

from fontTools.ttLib import TTFont
from fontTools.varLib import instancer

FROM = Path("src/main/resources/static/faces")
TO = Path("src/main/resources/org/wetside/web/paper")


def equal_figures(font):
    """Lets the figures of the feature "tnum" stand for the usual ones."""
    if "GSUB" not in font:
        return
    table = font["GSUB"].table
    lookups = {
        index
        for record in table.FeatureList.FeatureRecord
        if record.FeatureTag == "tnum"
        for index in record.Feature.LookupListIndex
    }
    swaps = {}
    for index in lookups:
        for subtable in table.LookupList.Lookup[index].SubTable:
            swaps.update(getattr(subtable, "mapping", {}))
    for cmap in font["cmap"].tables:
        for code in range(ord("0"), ord("9") + 1):
            if cmap.cmap.get(code) in swaps:
                cmap.cmap[code] = swaps[cmap.cmap[code]]


def keep(font, name):
    equal_figures(font)
    for unused in ("GSUB", "GPOS", "GDEF", "STAT", "BASE", "HVAR", "gasp", "prep"):
        if unused in font:
            del font[unused]
    font.flavor = None
    font.save(TO / f"{name}.ttf")


def main():
    TO.mkdir(parents=True, exist_ok=True)
    for name in ("400-normal", "400-italic", "700-normal"):
        keep(TTFont(FROM / f"source-serif-4-{name}.woff2"), f"source-serif-4-{name}")
    for weight in (400, 700):
        narrow = TTFont(FROM / "archivo-narrow.woff2")
        keep(
            instancer.instantiateVariableFont(narrow, {"wght": weight}),
            f"archivo-narrow-{weight}-normal",
        )


if __name__ == "__main__":
    main()
