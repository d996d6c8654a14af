"""German words of the trade as they are printed here, with where they are from. No published German reference is behind them: each
is common practice of German patterns and manuals for machine or hand knitting, or from memory and less sure.

Of a word with several senses one is printed; words that are met elsewhere and say something else are in `AVOIDED`.
"""

from __future__ import annotations

from typing import Literal

from walewright.record import record

WordFrom = Literal["common practice", "from memory"]


@record
class TradeWord:
    """The `english` word, and the stem by which the `german` one is known in all its forms; `known`: where it is from."""

    english: str
    german: str
    known: WordFrom = "common practice"
    note: str = ""


WORDS = (
    # Machine and tools.
    TradeWord("single bed", "einbettig"),
    TradeWord("bed", "Nadelbett"),
    TradeWord("needle pitch", "Teilung"),
    TradeWord("latch", "Zunge"),
    TradeWord("hook", "Haken"),
    TradeWord("shank", "Nadelsch", note="Nadelschaft; Schaft alone is also the leg of a sock"),
    TradeWord("centre mark", "Mittelmarkierung", "from memory"),
    TradeWord("sinker post", "Abschlagz", "from memory", "Abschlagzahn"),
    TradeWord("carriage", "Schlitten"),
    TradeWord("row counter", "Reihenzähler", note="abbreviated RZ"),
    TradeWord("yarn feeder", "Fadenführer"),
    TradeWord("yarn mast", "Fadenspanner", "from memory"),
    TradeWord("tension", "Maschenweite", note="never Fadenspannung, which is the pull on the yarn"),
    TradeWord("dial", "Maschenweitenregler", "from memory"),
    TradeWord("cast-on comb", "Anschlagkamm"),
    TradeWord("claw weight", "Krallengewicht", "from memory"),
    TradeWord("edge weight", "Randgewicht", "from memory"),
    TradeWord("transfer tool", "Decker"),
    TradeWord("prong", "Zinke"),
    TradeWord("latch tool", "Repassiernadel", "from memory", "Häkelnadel mit Zunge says it to everybody"),
    TradeWord("waste yarn", "Hilfsgarn"),
    TradeWord("ravel cord", "Trennfaden", "from memory"),
    TradeWord("bobbin", "Spule"),
    TradeWord("marker thread", "Markierungsfaden"),
    TradeWord("blunt sewing needle", "stumpfe Wollnadel"),
    TradeWord("edge guide", "Randführung", "from memory"),
    # Needles and carriage.
    TradeWord("working position", "Arbeitsstellung"),
    TradeWord("holding position", "Haltestellung", note="never Ruhestellung: some say it for out of work"),
    TradeWord("in work, out of work", "außer Arbeit"),
    TradeWord("waiting", "wartend", "from memory"),
    TradeWord("carriage side", "Schlittenseite"),
    TradeWord("carriage on the left, on the right", "Schlitten links", "from memory", "SL and SR are no fixed abbreviations"),
    # Loops and moves.
    TradeWord("stitch", "Masche", note="abbreviated M"),
    TradeWord("wale", "Maschenstäbchen"),
    TradeWord("bar between stitches", "Querfaden"),
    TradeWord("float", "Spannf", note="Spannfaden"),
    TradeWord("edge stitch", "Randmasche"),
    TradeWord("to cast on", "anschlagen"),
    TradeWord("e-wrap", "Wickelanschlag"),
    TradeWord("latch-tool chain", "gehäkelte", note="gehäkelter Anschlag"),
    TradeWord("to cast off", "abketten"),
    TradeWord("back-stitch cast-off", "abnähen", "from memory", "mit Rückstichen abnähen"),
    TradeWord("to decrease", "abnehmen", note="what leaves the bed is vom Nadelbett genommen or stillgelegt"),
    TradeWord("to increase", "zunehmen"),
    TradeWord("to transfer", "umhängen"),
    TradeWord("to wrap", "den Faden um die", "from memory", "den Faden um die Nadel legen"),
    TradeWord("short rows", "verkürzte Reihen"),
    TradeWord("to drop", "fallen lassen"),
    TradeWord("to latch up", "hochhäkeln"),
    TradeWord("to pick up", "auffassen"),
    TradeWord("to unravel", "abziehen"),
    TradeWord("to cross", "verkreuzen"),
    TradeWord("mirror image", "Gegengleich"),
    TradeWord("to link on the bed", "auf dem Nadelbett verb", "from memory", "ketteln belongs to the linking machine"),
    # Fabrics, edges, pieces.
    TradeWord("stocking stitch", "glatt rechts"),
    TradeWord("latched rib", "hochgehäkelte Rippen", "from memory", "no fixed word"),
    TradeWord("mock rib", "Scheinrippe", "from memory"),
    TradeWord("knit side", "rechte Maschenseite"),
    TradeWord("purl side", "linke Maschenseite"),
    TradeWord("tuck", "Fangmasche"),
    TradeWord("slip", "Hebemasche"),
    TradeWord("long stitch", "lang gezogene Masche", "from memory"),
    TradeWord("ladder", "Leiter", "from memory"),
    TradeWord("purl column", "Linksrippe", "from memory"),
    TradeWord("ridge", "Querrippe", "from memory"),
    TradeWord("picture knitting", "Intarsienmuster"),
    TradeWord("tension swatch", "Maschenprobe"),
    TradeWord("chart", "Strickschrift"),
    TradeWord("key", "Zeichenerklärung"),
    TradeWord("repeat", "Rapport"),
    TradeWord("fold row", "Bruchreihe"),
    TradeWord("picot hem", "Mäusezähnchensaum"),
    TradeWord("facing", "Beleg"),
    TradeWord("rolled edge", "Rollrand"),
    TradeWord("chained edge", "Kettenkante", "from memory"),
    TradeWord("buttonhole", "Knopfl", note="Knopfloch"),
    # Measures, care, making up.
    TradeWord("body measurements", "Körpermaß"),
    TradeWord("finished measurements", "Fertigmaß"),
    TradeWord("ease", "Weitenzugabe"),
    TradeWord("reach", "Hintere Mitte", "from memory", "from the middle of the back neck to the wrist: no one word"),
    TradeWord("schematic", "Schnittzeichnung"),
    TradeWord("ball", "Knäuel"),
    TradeWord("making up", "Ausarbeitung"),
    TradeWord("to graft", "Maschenstich"),
    TradeWord("to ease in", "einhalten"),
    TradeWord("to sew in", "vernäh"),
)

AVOIDED = ("Ruhestellung", "Fadenspannung", "linke Seite des Gestricks", "rechte Seite des Gestricks", "Kontermasche")
"""Words that mean two things, or something else."""
