"""Opens the slashed zero of a font file and gives the changed font its own name: open-zero.py FILE STYLE."""

import sys
from fontTools.pens.recordingPen import RecordingPen
from fontTools.pens.reverseContourPen import ReverseContourPen
from fontTools.pens.roundingPen import RoundingPen
from fontTools.pens.transformPen import TransformPen
from fontTools.pens.ttGlyphPen import TTGlyphPen
from fontTools.ttLib import TTFont

FAMILY = "Sumstitch Face"
CHANGED = "Atkinson Hyperlegible Next, cut down to the characters of one app, with an open zero."
LICENCE = "This Font Software is licensed under the SIL Open Font License, Version 1.1."
LICENCE_AT = "https://openfontlicense.org"


def bounds(contours):
    points = [point for contour in contours for _, points in contour for point in points]
    xs, ys = zip(*points)
    return min(xs), min(ys), max(xs), max(ys)


def contours_of(font, glyph):
    pen = RecordingPen()
    font.getGlyphSet()[glyph].draw(pen)
    contours = [[]]
    for step in pen.value:
        contours[-1].append(step)
        if step[0] == "closePath":
            contours.append([])
    return contours[:-1]


def draw(contour, pen):
    for step, points in contour:
        getattr(pen, step)(*points)


def open_zero(font):
    outer, *counters = contours_of(font, "zero")
    # Slashed, the counter is in two parts; together they reach just as far as one open counter does.
    if len(counters) != 2:
        sys.exit("the zero has another shape than it had: look at it")
    left, bottom, right, top = bounds([outer])
    into_left, into_bottom, into_right, into_top = bounds(counters)
    across = (into_right - into_left) / (right - left)
    up = (into_top - into_bottom) / (top - bottom)
    glyph = TTGlyphPen(None)
    draw(outer, glyph)
    inwards = (across, 0, 0, up, into_left - left * across, into_bottom - bottom * up)
    draw(outer, TransformPen(RoundingPen(ReverseContourPen(glyph)), inwards))
    font["glyf"]["zero"] = glyph.glyph()


def rename(font, style):
    full = f"{FAMILY} {style}"
    script = f"{FAMILY}-{style}".replace(" ", "")
    names = {
        1: FAMILY if style == "Regular" else full,
        2: "Regular",
        3: script,
        4: full,
        6: script,
        10: CHANGED,
        13: LICENCE,
        14: LICENCE_AT,
    }
    for name_id, text in names.items():
        font["name"].setName(text, name_id, 3, 1, 0x409)


file, style = sys.argv[1:]
font = TTFont(file, recalcTimestamp=False)
open_zero(font)
rename(font, style)
font.save(file)
