# SPDX-License-Identifier: Apache-2.0
"""Texts for people: each reaches the catalogues, and each catalogue says all of it.

What these rules cannot see: whether a translation is right, and whether the catalogues are those of this source. That they
are is a test of update_texts (UpdateTextsTest in tests/ui/format).
"""
import re
import xml.etree.ElementTree as ElementTree

from project_tree import Planted, Rule
from qml_tree import blank_comments

# A text that reaches the translator through a variable is in no catalogue, or in one of another context.
UNSEEN = [re.compile(r"(?<!\.)\btranslate\(\s*[^\"\s]"), re.compile(r"\btranslate\(\s*\"[^\"]*\"\s*,\s*[^\"\s]"),
          re.compile(r"(?<![\w.])(?:\w+::)?tr\(\s*[^\"\s)]"), re.compile(r"\bqsTr\(\s*[^\"'\s]")]
LOOKS_UP = "ui/format/formatter.cpp"  # Message texts, marked with WF_TEXT where they are written

PLACEHOLDER = re.compile(r"%[1-9]")
ENDING = re.compile(r"(?:\.|:|\?| …|\s)$")


def seen_by_update_texts(tree):
    found = []
    for name in tree.under("ui", "*.cpp", "*.h", "*.qml") + tree.under("app", "*.cpp", "*.h"):
        if name == LOOKS_UP:
            continue
        code = blank_comments(tree.text(name))
        for pattern in UNSEEN:
            for call in pattern.finditer(code):
                line = code.count("\n", 0, call.start()) + 1
                found.append(f"{name}:{line}: {call.group(0).strip()}: update_texts sees only a text that is written here")
    return found


def translation_faults(source, translation):
    if translation.get("type"):
        yield f"is {translation.get('type')}"
    text = translation.text or ""
    if not text.strip():
        yield "has no translation"
        return
    if sorted(set(PLACEHOLDER.findall(source))) != sorted(set(PLACEHOLDER.findall(text))):
        yield f"has other placeholders in its translation, {text!r}"
    ending = ENDING.search(source)
    if ending and not text.endswith(ending.group(0)):  # the other way round, it may be an abbreviation
        yield f"ends otherwise than its translation, {text!r}"


def translations(tree):
    found = []
    for name in tree.under("resources/translations", "*.ts"):
        for context in ElementTree.fromstring(tree.text(name)).iter("context"):
            for message in context.iter("message"):
                source = message.findtext("source") or ""
                found += [f"{name}: {context.findtext('name')}: {source!r} {fault}"
                          for fault in translation_faults(source, message.find("translation"))]
    return found


def catalogue(*messages):
    inside = "".join(f"<message><source>{source}</source><translation{more}>{text}</translation></message>"
                     for source, text, more in messages)
    return {"resources/translations/wetfront_x.ts": f"<TS><context><name>core</name>{inside}</context></TS>"}


SPDX = "// SPDX-License-Identifier: Apache-2.0\n"
CLEAN = {
    **catalogue(("%1 of %2 banks.", "%2 bancos, %1 hechos.", ""), ("Pump", "Bomba", "")),
    "ui/a.cpp": SPDX + 'auto a = tr("Pump"); auto b = Words::tr(\n "Pump"); auto c = QCoreApplication::translate("A", "Pump");\n'
                       'auto d = str(a); // tr(a)\n',
    LOOKS_UP: SPDX + "auto a = QCoreApplication::translate(context, text);\n",
    "ui/qml/A.qml": SPDX + 'Text { text: qsTr("Pump") }\n',
}

RULES = [
    Rule("seen_by_update_texts", "every text for people stands where update_texts sees it", seen_by_update_texts, CLEAN, [
        Planted("a context in a variable", {"ui/a.cpp": SPDX + 'auto a = translate(c, "Pump");\n'}, "ui/a.cpp:2: translate(c"),
        Planted("a text in a variable", {"ui/a.cpp": SPDX + 'auto a = translate("A", text);\n'}, 'ui/a.cpp:2: translate("A", t'),
        Planted("a function of that name", {"ui/a.cpp": SPDX + "QString tr(const char* text);\n"}, "ui/a.cpp:2: tr(c"),
        Planted("another's tr()", {"ui/a.cpp": SPDX + "auto a = A::tr(text);\n"}, "ui/a.cpp:2: A::tr(t"),
        Planted("a page's variable", {"ui/qml/A.qml": SPDX + "Text { text: qsTr(name) }\n"}, "ui/qml/A.qml:2: qsTr(n"),
    ]),
    Rule("translations", "every catalogue says every text, with the values of the English", translations, CLEAN, [
        Planted("nothing", catalogue(("Pump", "", "")), "'Pump' has no translation"),
        Planted("not done", catalogue(("Pump", "Bomba", ' type="unfinished"')), "'Pump' is unfinished"),
        Planted("a value too few", catalogue(("%1 of %2", "%1", "")), "'%1 of %2' has other placeholders"),
        Planted("another value", catalogue(("%1", "%2", "")), "'%1' has other placeholders"),
        Planted("no full stop", catalogue(("It drips.", "Gotea", "")), "'It drips.' ends otherwise"),
    ]),
]
