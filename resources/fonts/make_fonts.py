#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Makes the bundled family "Hearth Sans" out of Open Sans (Apache License 2.0).

    python3 make_fonts.py [FOLDER WITH OpenSans-Regular.ttf AND OpenSans-Semibold.ttf]

What it does, and why:
  - keeps the letters that records and screens use, so that a PDF embeds little and a face stays under 60 KB;
  - drops hinting: layout in millimetres must not depend on a device, and embedding an unhinted face is faster;
  - drops ligatures and alternates: one letter, one glyph, so that text copied out of a PDF is the text;
  - adds what the original lacks: subscript figures (its superiors, set lower), arrows, the hyphens and spaces of
    fixed behaviour, and a mark for what could not be read;
  - renames: the semibold becomes the family's bold, so that any request for strong text finds it.

Same input, same bytes: the time stamp in `head` is fixed. Needs fontTools (python3-fonttools).
"""

import os
import sys

from fontTools import subset
from fontTools.pens.recordingPen import DecomposingRecordingPen
from fontTools.pens.transformPen import TransformPen
from fontTools.pens.ttGlyphPen import TTGlyphPen
from fontTools.ttLib import TTFont

FAMILY = "Hearth Sans"
FACES = {  # file -> (our style, weight, is bold)
    "OpenSans-Regular.ttf": ("Regular", 400, False),
    "OpenSans-Semibold.ttf": ("Bold", 700, True),
}
VERSION = "1.000"
STAMP = 3873398400  # 2026-09-28, seconds since 1904

KEPT = (
    set(range(0x20, 0x7F))
    | set(range(0xA0, 0x180))  # Latin-1, Latin Extended-A: Polish, Welsh circumflexes, most of Europe
    | set(map(ord, "ẀẁẂẃẄẅỲỳ"))  # the rest of Welsh
    | set(map(ord, "ȘșȚț"))
    | set(map(ord, "–—‘’‚“”„†•…‰‹›€™−≈≠≤≥Ωµ⁄⁰⁴⁵⁶⁷⁸⁹"))
)
SUBSCRIPTS = {0x2080 + n: code for n, code in
              enumerate([0x2070, 0xB9, 0xB2, 0xB3, 0x2074, 0x2075, 0x2076, 0x2077, 0x2078, 0x2079])}
SAME_AS = {0x2010: 0x2D, 0x2011: 0x2D, 0x2007: 0x30, 0x2126: 0x3A9, 0x394: 0x2206}
SPACES = {0x2009: 0.2, 0x202F: 0.2}  # thin, narrow no-break: shares of the em


def add_glyph(font, code, name, glyph, advance):
    """Puts a glyph under a code point, with its left side bearing taken from its outline."""
    glyph.recalcBounds(font["glyf"])
    font.setGlyphOrder(font.getGlyphOrder() + [name])
    font["glyf"].glyphs[name] = glyph
    font["hmtx"].metrics[name] = (advance, getattr(glyph, "xMin", 0))
    for table in font["cmap"].tables:
        if table.isUnicode():
            table.cmap[code] = name


def shifted(font, source, dy):
    pen = TTGlyphPen(None)
    recording = DecomposingRecordingPen(font.getGlyphSet())
    font.getGlyphSet()[source].draw(recording)
    recording.replay(TransformPen(pen, (1, 0, 0, 1, 0, dy)))
    return pen.glyph()


def polygon(points):
    pen = TTGlyphPen(None)
    for contour in points:
        pen.moveTo(contour[0])
        for point in contour[1:]:
            pen.lineTo(point)
        pen.closePath()
    return pen.glyph()


def arrow(stroke, turn):
    """An arrow of our own: a shaft and an open head, 1000 units long round (600, 700), turned in quarters."""
    half = stroke / 2
    reach, head = 500, 300
    slant = stroke * 0.7071
    outline = [
        (-reach, half), (reach - 2.2 * half, half), (reach - 2.2 * half - head + slant, half + head - slant),
        (reach - 2.2 * half - head + 2 * slant, half + head), (reach, 0),
        (reach - 2.2 * half - head + 2 * slant, -half - head), (reach - 2.2 * half - head + slant, -half - head + slant),
        (reach - 2.2 * half, -half), (-reach, -half),
    ]
    for _ in range(turn):
        outline = [(-y, x) for x, y in outline]
    return polygon([[(round(x + 600), round(y + 700)) for x, y in outline]])


def add_missing(font, bold):
    cmap = font.getBestCmap()
    for code, source in SUBSCRIPTS.items():
        name = cmap[source]
        add_glyph(font, code, "uni%04X" % code, shifted(font, name, -860), font["hmtx"].metrics[name][0])
    stroke = 190 if bold else 140
    for turn, code in enumerate([0x2192, 0x2191, 0x2190, 0x2193]):
        add_glyph(font, code, "uni%04X" % code, arrow(stroke, turn), 1200)
    for code, share in SPACES.items():
        add_glyph(font, code, "uni%04X" % code, polygon([]), round(share * font["head"].unitsPerEm))
    frame = [[(100, 0), (100, 1460), (1100, 1460), (1100, 0)], [(220, 120), (980, 120), (980, 1340), (220, 1340)],
             [(540, 300), (540, 450), (660, 450), (660, 300)], [(540, 580), (540, 1160), (660, 1160), (660, 580)]]
    add_glyph(font, 0xFFFD, "uniFFFD", polygon(frame), 1200)
    for table in font["cmap"].tables:
        if table.isUnicode():
            for code, source in SAME_AS.items():
                if source in table.cmap and code not in (0x2007,):
                    table.cmap[code] = table.cmap[source]
    digit = font["hmtx"].metrics[cmap[0x30]][0]
    add_glyph(font, 0x2007, "uni2007", polygon([]), digit)


def rename(font, style, weight, bold):
    names = font["name"]
    original = names.getDebugName(0)
    names.names = []
    ps = FAMILY.replace(" ", "") + "-" + style
    texts = {
        0: original + " Subset, glyphs added and renamed as " + FAMILY + " for Hearthledger.",
        1: FAMILY, 2: style, 3: VERSION + ";" + ps, 4: FAMILY + " " + style, 5: "Version " + VERSION, 6: ps,
        13: "Licensed under the Apache License, Version 2.0", 14: "https://www.apache.org/licenses/LICENSE-2.0",
    }
    for key, text in texts.items():
        names.setName(text, key, 3, 1, 0x409)
    font["OS/2"].usWeightClass = weight
    font["OS/2"].fsType = 0  # may be embedded
    font["OS/2"].fsSelection = 0x20 if bold else 0x40
    font["OS/2"].achVendID = "HRTH"
    font["head"].macStyle = 1 if bold else 0
    font["head"].fontRevision = 1.0


def make(source, target, style, weight, bold):
    font = TTFont(source, recalcTimestamp=False)
    options = subset.Options()
    options.hinting = False
    options.layout_features = []
    options.legacy_kern = True  # the original keeps its kerning in `kern`; its GPOS holds none
    options.name_IDs = ["*"]
    options.notdef_outline = True
    options.glyph_names = False
    options.recalc_timestamp = False
    options.drop_tables += ["DSIG", "LTSH", "VDMX", "hdmx", "gasp", "GPOS", "GSUB", "GDEF", "prep", "fpgm", "cvt "]
    cutter = subset.Subsetter(options)
    cutter.populate(unicodes=KEPT | set(SUBSCRIPTS.values()))
    cutter.subset(font)
    add_missing(font, bold)
    rename(font, style, weight, bold)
    font["head"].created = font["head"].modified = STAMP
    font["post"].formatType = 3.0
    font.save(target)
    print("%-24s %6d bytes  %d letters" % (os.path.basename(target), os.path.getsize(target), len(font.getBestCmap())))


def main():
    folder = sys.argv[1] if len(sys.argv) > 1 else "/usr/share/fonts/truetype/open-sans"
    here = os.path.dirname(os.path.abspath(__file__))
    for name, (style, weight, bold) in FACES.items():
        target = os.path.join(here, FAMILY.replace(" ", "") + "-" + style + ".ttf")
        make(os.path.join(folder, name), target, style, weight, bold)


if __name__ == "__main__":
    main()
