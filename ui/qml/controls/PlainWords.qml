// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import Wetfront.Theme

// Words and numbers in one of the program's sizes.
Text {
    // "small", "body", "title", "heading", "number", "display" or "running"
    property string kind: "body"
    property bool soft: false

    readonly property real kindSize: {
        switch (kind) {
        case "small":
            return Theme.fontSmall;
        case "title":
            return Theme.fontTitle;
        case "heading":
            return Theme.fontHeading;
        case "number":
            return Theme.fontNumber;
        case "display":
            return Theme.fontDisplay;
        case "running":
            return Theme.fontRunning;
        }
        return Theme.fontBody;
    }

    color: !enabled ? Theme.disabledInk : soft ? Theme.inkSoft : Theme.ink
    font.family: Theme.family
    font.pixelSize: kindSize
    font.bold: kind === "title" || kind === "heading"
    textFormat: Text.PlainText
    wrapMode: Text.Wrap
    Accessible.role: Accessible.StaticText
    Accessible.name: text
}
