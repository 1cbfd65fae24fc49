// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Theme

// What to do next, in one line, what was just done, smaller, and the time left while a pump stands still for a test.
Rectangle {
    id: line

    property string text
    property string note
    property string pumpOffText
    property bool pumpOffUrgent: false
    property bool backVisible: false
    default property alias extra: extras.data

    signal backAsked

    implicitHeight: Theme.target + 2 * Theme.gap
    color: Theme.surface

    Rectangle {
        width: parent.width
        height: Theme.border
        anchors.bottom: parent.bottom
        color: Theme.line
    }
    RowLayout {
        anchors.fill: parent
        anchors.margins: Theme.gap
        spacing: Theme.gap
        ActionButton {
            visible: line.backVisible
            pictogram: "back"
            Accessible.name: qsTr("Back")
            onClicked: line.backAsked()
        }
        ColumnLayout {
            spacing: 0
            PlainWords {
                text: line.text
                kind: "title"
                fontSizeMode: Text.Fit
                minimumPixelSize: Theme.fontSmall
                verticalAlignment: Text.AlignVCenter
                Layout.fillWidth: true
                Layout.fillHeight: true
            }
            PlainWords {
                visible: text.length > 0
                text: line.note
                kind: "small"
                soft: true
                wrapMode: Text.NoWrap
                elide: Text.ElideRight
                Accessible.role: Accessible.AlertMessage
                Layout.fillWidth: true
            }
        }
        Rectangle {
            visible: line.pumpOffText.length > 0
            implicitWidth: pill.implicitWidth + 2 * Theme.space
            Layout.fillHeight: true
            radius: Theme.radius
            color: line.pumpOffUrgent ? Theme.warningTint : Theme.well
            border.width: line.pumpOffUrgent ? Theme.borderStrong : Theme.border
            border.color: line.pumpOffUrgent ? Theme.warning : Theme.line
            Accessible.role: Accessible.AlertMessage
            Accessible.name: line.pumpOffText
            RowLayout {
                id: pill
                anchors.centerIn: parent
                spacing: Theme.gap
                Pictogram {
                    name: line.pumpOffUrgent ? "problem" : "clock"
                    size: Theme.pictogramSmall
                    colour: line.pumpOffUrgent ? Theme.warningInk : Theme.ink
                }
                PlainWords {
                    text: line.pumpOffText
                    color: line.pumpOffUrgent ? Theme.warningInk : Theme.ink
                    font.bold: true
                    Accessible.ignored: true
                }
            }
        }
        RowLayout {
            id: extras
            spacing: Theme.gap
        }
    }
}
