// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Charts
import Wetfront.Controls
import Wetfront.Theme
import Wetfront.ViewModels

// The field that a person signs on, as large as the window has room for. Esc and the first button keep what was there.
Panel {
    id: pad

    required property SignatureViewModel signatures
    required property string pumpOffText
    required property bool pumpOffUrgent

    title: signatures.role.length > 0 ? Sentence.fill(qsTr("Signature of %1, %2"), [signatures.name, signatures.role]) : qsTr("Signature of %1").arg(signatures.name)

    width: roomWidth
    height: roomHeight
    padding: Theme.gap

    Connections {
        target: pad.signatures
        function onFieldChanged(): void {
            if (pad.signatures.open === pad.opened)
                return;
            if (pad.signatures.open)
                pad.open();
            else
                pad.close();
        }
    }
    onClosed: signatures.cancel()

    ColumnLayout {
        anchors.fill: parent
        spacing: Theme.gap

        PlainWords {
            text: pad.title
            kind: "title"
            Layout.fillWidth: true
        }
        PlainWords {
            visible: text.length > 0
            text: pad.pumpOffText
            color: pad.pumpOffUrgent ? Theme.warningInk : Theme.ink
            font.bold: true
            Layout.fillWidth: true
        }
        PlainWords {
            text: qsTr("Kept and printed as the lines that are drawn here, with name and time. It is not a qualified electronic signature: local law decides what it is worth. To sign on paper instead, cancel: the sheet keeps a line.")
            kind: "small"
            Layout.fillWidth: true
        }
        Item {
            id: room
            Layout.fillWidth: true
            Layout.fillHeight: true
            Rectangle {
                anchors.centerIn: parent
                width: Math.min(room.width, Math.floor(room.height * field.aspect))
                height: Math.floor(width / field.aspect)
                color: Theme.well
                border.width: Theme.borderStrong
                border.color: Theme.ink
                Rectangle {
                    anchors.horizontalCenter: parent.horizontalCenter
                    y: parent.height * 3 / 4
                    width: parent.width - 2 * Theme.spaceLarge
                    height: Theme.border
                    color: Theme.line
                }
                SignatureItem {
                    id: field
                    anchors.fill: parent
                    drawable: pad.opened
                    strokes: pad.signatures.strokes
                    lineColor: Theme.ink
                    thickness: Theme.borderStrong
                    onStrokeDrawn: points => pad.signatures.addStroke(points)
                    Accessible.role: Accessible.Graphic
                    Accessible.name: qsTr("Field to sign on, with finger, glove or pen")
                    Accessible.description: pad.signatures.state
                }
            }
        }
        ErrorLine {
            text: pad.signatures.problem
            Layout.fillWidth: true
        }
        Flow {
            spacing: Theme.gap
            layoutDirection: Qt.RightToLeft
            Layout.fillWidth: true
            ActionButton {
                text: qsTr("Take this signature")
                kind: "primary"
                enabled: pad.signatures.strokes.length > 0
                onClicked: pad.signatures.take()
            }
            ActionButton {
                text: qsTr("Clear")
                pictogram: "bin"
                enabled: pad.signatures.strokes.length > 0
                onClicked: pad.signatures.clear()
            }
            ActionButton {
                text: qsTr("Cancel")
                onClicked: pad.signatures.cancel()
            }
        }
    }
}
