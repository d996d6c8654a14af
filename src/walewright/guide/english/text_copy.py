"""What the plain text says besides the steps."""

from __future__ import annotations

TEXT_COPY = {
    "text/sizes": "Sizes",
    "text/finished": "Finished",
    "text/tension": "Tension",
    "text/materials": "Materials",
    "text/choice": "{what}: {chosen}",
    "text/choices": "Choices",
    "text/regraded": "{what}: {own} (in the source {source}) ",
    "text/measurement": "{name}{to_fit:? (to fit)}: {lengths}{credit:? ({credit})}",
    "text/ease": "ease, {what}: {lengths}",
    "text/to-10-cm": "{stitches} stitches and {rows} rows to 10 cm",
    "text/to-1-in": "{stitches} stitches and {rows} rows to 1 in",
    "text/fabric": "{fabric}: {density} in {stitch}, {yarn} at {dial}{basis}",
    "text/fabric/plate": "{fabric}: {density} in {stitch}, {yarn} with {dial}{basis}",
    "text/machine": "machine: {bed}, {needles} needles {pitch} mm apart",
    "text/yarn": "{yarn}: buy {balls} {one:?ball|balls} of {ball_grams} g = {ball_metres} m; about {grams} g: garment {garment} g, "
    "swatches {swatches} g, reserve {reserve} g",
    "text/reckoned": "reckoned {way}",
    "text/cm": "{cm} cm",
    "text/in": "{inches} in",
    "text/both": "{cm} cm / {inches} in",
    "text/proven": "Proven: every size was knitted on the simulated bed by walewright {version}, and read back from these words.",
}
