// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Theme

// A caution where the work is done. DANGER, WARNING and CAUTION are for injury and carry the triangle; NOTICE is for
// property and data. The source opens on touch.
TouchTarget {
    id: caution

    // "danger", "warning", "caution" or "notice"
    required property string level
    required property string message
    property string source
    property bool expanded: false

    readonly property bool injury: level !== "notice"
    readonly property string signalWord: {
        switch (level) {
        case "danger":
            return qsTr("DANGER");
        case "warning":
            return qsTr("WARNING");
        case "caution":
            return qsTr("CAUTION");
        }
        return qsTr("NOTICE");
    }

    text: signalWord + ": " + message
    verticalPadding: Theme.gap
    leftPadding: Theme.gap + Theme.space
    Accessible.role: Accessible.Button
    onClicked: expanded = !expanded

    background: Rectangle {
        color: caution.injury ? Theme.warningTint : Theme.surface
        radius: Theme.radius
        border.width: Theme.border
        border.color: caution.injury ? Theme.warning : Theme.line
        Rectangle {
            width: Theme.gap
            height: parent.height
            radius: Theme.radius
            color: caution.injury ? Theme.warning : Theme.line
        }
    }
    contentItem: RowLayout {
        spacing: Theme.space
        Pictogram {
            visible: caution.injury
            name: "problem"
            colour: Theme.warningInk
            Layout.alignment: Qt.AlignTop
        }
        ColumnLayout {
            spacing: Theme.spaceSmall
            PlainWords {
                text: caution.signalWord
                color: caution.injury ? Theme.warningInk : Theme.ink
                font.bold: true
                Accessible.ignored: true
            }
            PlainWords {
                text: caution.message
                Accessible.ignored: true
                Layout.fillWidth: true
            }
            PlainWords {
                visible: caution.expanded && text.length > 0
                text: caution.source.length > 0 ? qsTr("Source: %1").arg(caution.source) : ""
                kind: "small"
                soft: true
                Layout.fillWidth: true
            }
        }
        Pictogram {
            visible: caution.source.length > 0
            name: caution.expanded ? "up" : "down"
            size: Theme.pictogramSmall
            colour: Theme.inkSoft
            Layout.alignment: Qt.AlignTop
        }
    }
}
