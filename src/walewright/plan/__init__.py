"""plan: a proven pattern as data for other programs, from the same values that the pages are printed from.

Input: a proven outcome's stages. Output: a JSON document, described by `plan.schema.json` beside this file.
"""

from walewright.plan.document import FORMAT, plan_bytes, plan_json, schema

__all__ = ["FORMAT", "plan_bytes", "plan_json", "schema"]
