# SPDX-License-Identifier: Apache-2.0
"""What QML pages leave to others: looks to the theme, decisions to the view models; and what each control must say.

These rules read text, they do not run the program. What they cannot see: a colour or a size that reaches a page through
JavaScript or C++, an accessible name that is empty at run time, and a control that only C++ makes.
"""
import re
from pathlib import PurePosixPath

from project_tree import Planted, Rule
from qml_tree import blank_comments, blank_strings, objects

COLOUR = re.compile(r"""["']#[0-9a-fA-F]{3,8}["']|\bQt\.(?:rgba|hsla|hsva|color|tint|darker|lighter)\("""
                    r"""|\b\w*[cC]olor\s*:\s*["'](?!transparent["'])[^"']*["']""")
SIZE = re.compile(r"(?:^|[\s;{.])((?:width|height|implicitWidth|implicitHeight|preferredWidth|preferredHeight|minimumWidth"
                  r"|minimumHeight|maximumWidth|maximumHeight|pixelSize|pointSize|spacing|rowSpacing|columnSpacing|radius"
                  r"|(?:left|right|top|bottom|horizontal|vertical)?(?:[mM]argins?|[pP]adding|Inset))"
                  r"\s*:\s*(?!0\b(?!\.))[0-9][0-9.]*)\s*(?:$|[;}])")
LITERAL_TEXT = re.compile(r"""(?:^|[\s;{.])((?:text|title|label|placeholderText|Accessible\.name|Accessible\.description)"""
                          r"""\s*:\s*["'][^"']*[A-Za-z][^"']*["'])""")
CONTEXT_PROPERTY = re.compile(r"\bsetContext(?:Property|Properties|Object)\b")
QUICK_ITEM = re.compile(r"\bQQuick(?:Item|Window|View)\b")

# What would take "<b>" for a tag: QML's texts but where they are told not to, and in C++ what guesses or speaks HTML.
# TextInput, and so the TextField of the templates, shows what it holds.
TEXTS = {"Text", "Label", "TextArea", "TextEdit", "ToolTip", "TextMetrics"}
PLAIN = re.compile(r"\btextFormat\s*:\s*(?:Text|TextEdit)\.PlainText\b")
MARKUP = re.compile(r"\b(?:Text|TextEdit)\.(?:StyledText|RichText|AutoText|MarkdownText)\b")
MARKUP_IN_CODE = re.compile(r"\b(?:QTextDocument|QStaticText|QLabel|QMessageBox|QTextEdit|QTextBrowser|QToolTip"
                            r"|setHtml|setMarkdown|insertHtml|fromHtml|setTextFormat)\b")
OPENED_FROM_TEXT = re.compile(r"\b(?:QDesktopServices|openUrlExternally|onLinkActivated|XMLHttpRequest|QNetworkAccessManager)\b")

# Qt gives these their text as accessible name; the others have none of their own.
NAMED_BY_TEXT = {"AbstractButton", "Button", "CheckBox", "CheckDelegate", "DelayButton", "ItemDelegate", "MenuItem",
                 "RadioButton", "RadioDelegate", "RoundButton", "Switch", "SwitchDelegate", "TabButton", "ToolButton"}
NAMED_BY_HAND = {"ComboBox", "Dial", "MouseArea", "RangeSlider", "Slider", "SpinBox", "TapHandler", "TextArea", "TextEdit",
                 "TextField", "TextInput", "Tumbler"}
HANDLERS = {"MouseArea", "TapHandler"}  # they act for the item around them, so its name will do

PACKAGE_OF = {"QtQml": "qml6-module-qtquick", "QtQuick.Controls.Basic": "qml6-module-qtquick-controls",
              "QtQuick.Controls.impl": "qml6-module-qtquick-controls"}


def page_files(tree):
    return [name for name in tree.under("ui", "*.qml") if "theme" not in PurePosixPath(name).parts]


def matches(tree, names, pattern, complaint):
    found = []
    for name in names:
        for number, line in enumerate(blank_comments(tree.text(name)).splitlines(), start=1):
            for match in pattern.finditer(line):
                found.append(f"{name}:{number}: {match.group(match.lastindex or 0).strip()}: {complaint}")
    return found


def theme_only(tree):
    return (matches(tree, page_files(tree), COLOUR, "a colour; take it from the theme")
            + matches(tree, page_files(tree), SIZE, "a size; take it from the theme"))


def texts_translated(tree):
    return matches(tree, tree.under("ui", "*.qml"), LITERAL_TEXT, "a text for people; pass it through qsTr()")


def view_models_without_items(tree):
    code = tree.under("ui", "*.h", "*.cpp") + tree.under("app", "*.h", "*.cpp")
    models = tree.under("ui/viewmodels", "*.h", "*.cpp")
    return (matches(tree, code, CONTEXT_PROPERTY, "QML gets typed properties and registered types, no context properties")
            + matches(tree, models, QUICK_ITEM, "a view model knows no item or window"))


def plain_text(tree):
    pages = tree.under("ui", "*.qml")
    code = tree.under("ui", "*.h", "*.cpp") + tree.under("app", "*.h", "*.cpp")
    found = []
    for name in pages:
        texts = [item for item in objects(tree.text(name)) if item.type in TEXTS]
        said = len(PLAIN.findall(blank_comments(tree.text(name))))
        unsaid = [item for item in texts if "textFormat" not in item.properties]
        found += [f"{name}:{item.line}: {item.type} guesses whether its text is markup; use PlainWords, or say PlainText"
                  for item in unsaid]
        if not unsaid and said < len(texts):
            found.append(f"{name}: a textFormat other than PlainText")
    return (found + matches(tree, pages, MARKUP, "markup; names and notes from elsewhere are shown as typed")
            + matches(tree, code, MARKUP_IN_CODE, "takes tags in a text for markup; draw the text as it is")
            + matches(tree, pages + code, OPENED_FROM_TEXT, "opens what a text names; nothing from a record is ever followed"))


def behind_brackets(code, at):
    """Where the bracket that is open at `at` is closed."""
    depth = 1
    while at < len(code) and depth:
        depth += {"(": 1, ")": -1}.get(code[at], 0)
        at += 1
    return at


def values_at_once(tree):
    found = []
    for name in tree.under("ui", "*.qml", "*.h", "*.cpp") + tree.under("app", "*.h", "*.cpp"):
        code = blank_strings(tree.text(name))
        found += [f"{name}:{code.count(chr(10), 0, call.start()) + 1}: .arg().arg() takes a %2 in the first value for the place of"
                  " the second; give them together: arg(a, b) in C++, Sentence.fill() in QML"
                  for call in re.finditer(r"\.arg\(", code) if re.match(r"\s*\.arg\(", code[behind_brackets(code, call.end()):])]
    return found


def accessible_names(tree):
    files = {name: objects(tree.text(name)) for name in tree.under("ui", "*.qml")}
    own = {}  # an own type's name -> the object at its root
    for name, found in files.items():
        own.update({item.inline: item for item in found if item.inline})
        if found:
            own[PurePosixPath(name).stem] = found[0]

    def chain(item):
        """The object, then the root of its type, the root of that one's type, ..."""
        seen = []
        while item is not None and item not in seen:
            seen.append(item)
            item = own.get(item.type)
        return seen

    def names_itself(item):
        links = chain(item)
        by_text = links[-1].type in NAMED_BY_TEXT
        return any("Accessible.name" in link.properties or "Accessible.ignored" in link.properties
                   or (by_text and "text" in link.properties) for link in links)

    complaints = []
    for name, found in files.items():
        for item in found:
            kind = chain(item)[-1].type
            if kind not in NAMED_BY_TEXT | NAMED_BY_HAND or item is found[0] or item.inline or names_itself(item):
                continue  # the root of an own type is judged where the type is used
            if kind in HANDLERS and item.parent is not None and names_itself(item.parent):
                continue
            complaints.append(f"{name}:{item.line}: {item.type} has no Accessible.name: it cannot be heard, nor found by a test")
        for number, line in enumerate(blank_comments(tree.text(name)).splitlines(), start=1):
            if re.search(r"""Accessible\.name\s*:\s*(""|'')""", line):
                complaints.append(f"{name}:{number}: Accessible.name is empty")
    return complaints


def modules_installed(tree):
    """Debian's QML modules are loaded at run time and pulled in by nothing, so the package list must name each."""
    listed = {}
    for kind in ("run", "test"):
        names = {line.split()[0] for _, line in tree.lines(f"packaging/packages-{kind}.txt") if line.strip()}
        listed[kind] = names | listed.get("run", set())
    found = []
    for name in tree.files("*.qml"):
        packages = listed["test" if name.startswith("tests/") else "run"]
        for number, line in tree.lines(name):
            match = re.match(r"\s*import\s+(Qt[\w.]*)", line)
            if match:
                package = PACKAGE_OF.get(match[1], "qml6-module-" + match[1].lower().replace(".", "-"))
                if package not in packages:
                    found.append(f"{name}:{number}: imports {match[1]}, but the package lists do not name {package}")
    return found


PAGE = "ui/qml/wizard/APage.qml"
CLEAN = {
    "packaging/packages-run.txt": "qml6-module-qtquick    why\nqml6-module-qtquick-controls\n",
    "packaging/packages-test.txt": "qml6-module-qttest\n",
    "tests/ui/tst_a.qml": "import QtTest\nimport QtQuick\nTestCase {}\n",
    "ui/qml/theme/Theme.qml": 'QtObject { property color ink: "#102030"; property int touch: 56; font.pixelSize: 20 }\n',
    "ui/qml/controls/BigButton.qml":
        "import QtQuick.Controls.Basic\nButton {\n    id: root\n    required property string caption\n    Accessible.name: caption\n}\n",
    "ui/qml/controls/Field.qml": "TextField {\n    spacing: 0\n}\n",
    "ui/viewmodels/step.h": "class Step : public QObject {};\n",
    "app/desktop/main.cpp": "engine.loadFromModule();\n",
    PAGE: """// "#fff" in a comment is no colour
import QtQuick
Item {
    width: Theme.touch
    height: 2 * Theme.touch
    component Row: Button { text: caption }
    function area(): Item { return null }
    Rectangle { color: "transparent"; anchors { margins: 0 } }
    BigButton { caption: qsTr("Start") }
    Field {
        Accessible.name: qsTr("Off-time")
    }
    ListView {
        delegate: Row { }
    }
    Rectangle {
        Accessible.name: qsTr("Mark")
        Accessible.role: Accessible.Button
        TapHandler { onTapped: { if (a) { b() } } }
    }
    MouseArea { Accessible.ignored: true }
    Button {
        text: qsTr("Undo")
    }
}
""",
}
OTHER = "ui/qml/wizard/BPage.qml"

RULES = [
    Rule("theme_only", "colours and sizes stand in the theme alone", theme_only, CLEAN, [
        Planted("a hex colour", {OTHER: 'Item {\n    property var a: b ? "#ff8800" : c\n}\n'}, OTHER + ":2: "),
        Planted("a named colour", {OTHER: 'Rectangle { border.color: "red" }\n'}, 'color: "red"'),
        Planted("a colour made up", {OTHER: "Item { property color a: Qt.rgba(1, 0, 0, 1) }\n"}, "Qt.rgba("),
        Planted("a font size", {OTHER: "Label { font.pixelSize: 18 }\n"}, "pixelSize: 18"),
        Planted("a height", {OTHER: "Item {\n    implicitHeight: 40\n}\n"}, OTHER + ":2: implicitHeight: 40"),
        Planted("a margin in a group", {OTHER: "Item { anchors { leftMargin: 0.5 } }\n"}, "leftMargin: 0.5"),
    ]),
    Rule("texts_translated", "texts in QML pass through qsTr()", texts_translated, CLEAN, [
        Planted("a caption", {OTHER: 'Label { text: "Stop" }\n'}, 'text: "Stop"'),
        Planted("an accessible name", {OTHER: "Item {\n    Accessible.name: 'Stop'\n}\n"}, OTHER + ":2: Accessible.name: 'Stop'"),
    ]),
    Rule("view_models_without_items", "view models know no item, QML gets no context property", view_models_without_items, CLEAN, [
        Planted("a context property", {"app/desktop/a.cpp": 'engine.rootContext()->setContextProperty("a", &a);\n'}, "app/desktop/a.cpp:1: setContextProperty"),
        Planted("a context object", {"ui/charts/a.cpp": "context->setContextObject(a);\n"}, "ui/charts/a.cpp:1: setContextObject"),
        Planted("an item", {"ui/viewmodels/a.h": "QQuickItem* page;\n"}, "ui/viewmodels/a.h:1: QQuickItem"),
    ]),
    Rule("plain_text", "texts are shown as typed, and nothing that a text names is opened", plain_text, {
        **CLEAN,
        "ui/qml/controls/PlainWords.qml": "Text {\n    textFormat: Text.PlainText\n}\n",
        "ui/qml/wizard/CPage.qml": "Item {\n    PlainWords { text: a }\n    T.TextField { text: a }\n    // Text.RichText\n}\n",
        "ui/print/type.cpp": "painter.drawText(at, text);\n",
    }, [
        Planted("a text that guesses", {OTHER: "Item {\n    Text { text: a }\n}\n"}, OTHER + ":2: Text guesses"),
        Planted("a label that guesses", {OTHER: "Item {\n    Label {\n        text: a\n    }\n}\n"}, OTHER + ":2: Label guesses"),
        Planted("a format chosen at run time", {OTHER: "Text { textFormat: a ? b : c }\n"}, OTHER + ": a textFormat"),
        Planted("markup asked for", {OTHER: "PlainWords { textFormat: Text.RichText }\n"}, OTHER + ":1: Text.RichText"),
        Planted("HTML on paper", {"ui/print/a.cpp": "QTextDocument page;\n"}, "ui/print/a.cpp:1: QTextDocument"),
        Planted("a box that guesses", {"app/desktop/a.cpp": "QMessageBox box;\n"}, "app/desktop/a.cpp:1: QMessageBox"),
        Planted("an address opened", {"ui/viewmodels/a.cpp": "QDesktopServices::openUrl(url);\n"}, "ui/viewmodels/a.cpp:1: QDesktopServices"),
    ]),
    Rule("values_at_once", "the values of a text are put in all at once", values_at_once, {
        **CLEAN,
        "ui/viewmodels/a.cpp": 'tr("%1: %2").arg(name.arg(1), text); // .arg(a).arg(b)\nf(tr("%1").arg(a), tr("%1").arg(b));\n',
        "ui/qml/wizard/CPage.qml": 'Item {\n    property string a: Sentence.fill(qsTr("%1: %2"), [b, c])\n    property string d: qsTr("%1").arg(b)\n}\n',
    }, [
        Planted("a chain in QML", {OTHER: 'Item {\n    property string a: qsTr("%1: %2").arg(b).arg(c)\n}\n'}, OTHER + ":2: .arg().arg()"),
        Planted("a chain in C++", {"ui/viewmodels/b.cpp": 'auto a = tr("%1: %2").arg(b(1)).arg(c);\n'}, "ui/viewmodels/b.cpp:1: .arg().arg()"),
        Planted("a chain over lines", {"app/desktop/b.cpp": 'auto a = tr("%1: %2")\n    .arg(b)\n    .arg(c);\n'}, "app/desktop/b.cpp:2: .arg().arg()"),
    ]),
    Rule("accessible_names", "every control has an accessible name", accessible_names, CLEAN, [
        Planted("a button without", {OTHER: "Item {\n    Button { icon.name: a }\n}\n"}, OTHER + ":2: Button"),
        Planted("a field whose text is no name", {OTHER: "Item {\n    TextField { text: a }\n}\n"}, OTHER + ":2: TextField"),
        Planted("an own field without", {OTHER: "Item {\n    Field { }\n}\n"}, OTHER + ":2: Field"),
        Planted("a delegate without", {OTHER: "ListView {\n    delegate: ItemDelegate {\n    }\n}\n"}, OTHER + ":2: ItemDelegate"),
        Planted("a touch on an item without", {OTHER: "Item {\n    Rectangle {\n        TapHandler { }\n    }\n}\n"}, OTHER + ":3: TapHandler"),
        Planted("a name that belongs to the child", {OTHER: "Item {\n    Slider {\n        Item { Accessible.name: a }\n    }\n}\n"}, OTHER + ":2: Slider"),
        Planted("a name in a comment", {OTHER: "Item {\n    Slider {\n        // Accessible.name: a\n    }\n}\n"}, OTHER + ":2: Slider"),
        Planted("an empty name", {OTHER: 'Item {\n    Slider { Accessible.name: "" }\n}\n'}, OTHER + ":2: Accessible.name is empty"),
    ]),
    Rule("modules_installed", "each imported Qt module stands in the package lists", modules_installed, CLEAN, [
        Planted("a module not listed", {OTHER: "import QtQuick.Dialogs\nItem {}\n"}, OTHER + ":1: imports QtQuick.Dialogs"),
        Planted("a test module in the program", {OTHER: "import QtTest 1.0\nItem {}\n"}, OTHER + ":1: imports QtTest"),
    ]),
]
