// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Theme

// One finding, worst sign by word, shape and colour. The remedy stands in sight, likely causes and the source open on touch.
TouchTarget {
    id: finding

    required property string severity
    required property string message
    property string consequence
    property string remedy
    property string source
    property list<string> causes: []
    property bool hasReason: false
    property bool expanded: false

    signal reasonAsked

    readonly property bool warns: severity === "harm" || severity === "fault"
    readonly property string severityWord: {
        switch (severity) {
        case "harm":
            return qsTr("Harm");
        case "fault":
            return qsTr("Fault");
        case "waste":
            return qsTr("Waste");
        }
        return qsTr("Note");
    }

    text: severityWord + ": " + message
    horizontalPadding: Theme.space
    verticalPadding: Theme.gap
    Accessible.description: (consequence + " " + remedy).trim()
    onClicked: expanded = !expanded

    background: Rectangle {
        color: finding.severity === "harm" ? Theme.warningTint : Theme.surface
        radius: Theme.radius
        border.width: finding.severity === "harm" ? Theme.borderStrong : Theme.border
        border.color: finding.warns ? Theme.warning : Theme.line
    }
    contentItem: RowLayout {
        spacing: Theme.space
        ColumnLayout {
            Layout.alignment: Qt.AlignTop
            Layout.fillWidth: false
            Layout.preferredWidth: Math.max(Theme.target, Math.ceil(implicitWidth))
            spacing: 0
            SeverityMark {
                severity: finding.severity
                Layout.alignment: Qt.AlignHCenter
            }
            PlainWords {
                text: finding.severityWord
                kind: "small"
                font.bold: true
                color: finding.warns ? Theme.warningInk : Theme.ink
                horizontalAlignment: Text.AlignHCenter
                Accessible.ignored: true
                Layout.fillWidth: true
            }
        }
        ColumnLayout {
            spacing: Theme.spaceSmall
            PlainWords {
                text: finding.message
                font.bold: true
                Accessible.ignored: true
                Layout.fillWidth: true
            }
            PlainWords {
                visible: text.length > 0
                text: finding.consequence
                Accessible.ignored: true
                Layout.fillWidth: true
            }
            RowLayout {
                visible: finding.remedy.length > 0
                spacing: Theme.gap
                Pictogram {
                    name: "wrench"
                    size: Theme.pictogramSmall
                    colour: Theme.water
                    Layout.alignment: Qt.AlignTop
                }
                PlainWords {
                    text: finding.remedy
                    color: Theme.water
                    Accessible.ignored: true
                    Layout.fillWidth: true
                }
            }
            PlainWords {
                visible: finding.expanded && finding.causes.length > 0
                text: qsTr("Likely, in this order:")
                Layout.fillWidth: true
            }
            Repeater {
                model: finding.expanded ? finding.causes : []
                delegate: PlainWords {
                    required property int index
                    required property string modelData
                    text: (index + 1) + ". " + modelData
                    Layout.fillWidth: true
                }
            }
            PlainWords {
                visible: finding.expanded && text.length > 0
                text: finding.source.length > 0 ? qsTr("Source: %1").arg(finding.source) : ""
                kind: "small"
                soft: true
                Layout.fillWidth: true
            }
            ActionButton {
                visible: finding.expanded && finding.hasReason
                text: qsTr("Show the reason")
                pictogram: "info"
                onClicked: finding.reasonAsked()
            }
        }
        Pictogram {
            visible: finding.source.length > 0 || finding.causes.length > 0 || finding.hasReason
            name: finding.expanded ? "up" : "down"
            size: Theme.pictogramSmall
            colour: Theme.inkSoft
            Layout.alignment: Qt.AlignTop
        }
    }
}
