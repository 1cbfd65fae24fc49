// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Wetfront.Controls
import Wetfront.Theme

// A wet or gloved hand on the glass while something is timed: nothing is left but the mark button and undo. What must be
// known stays in sight: what to do, the time, how long a pump may still be off, and presses that are not stored.
T.Popup {
    id: panel

    required property string instruction
    required property string markText
    required property string markDetail
    required property string elapsedText
    required property string elapsedLabel
    required property string undoText
    required property string pumpOffText
    required property bool pumpOffUrgent
    required property string problem
    required property string awakeProblem
    required property bool canMark

    signal marked
    signal undone

    parent: T.Overlay.overlay
    width: T.Overlay.overlay ? T.Overlay.overlay.width : 0
    height: T.Overlay.overlay ? T.Overlay.overlay.height : 0
    padding: Theme.gap
    modal: true
    focus: true
    closePolicy: T.Popup.NoAutoClose

    background: Rectangle {
        color: Theme.ground
        Accessible.role: Accessible.Dialog
        Accessible.name: qsTr("locked")
    }
    contentItem: MarkKeys {
        onKeyMarked: panel.marked()

        ColumnLayout {
            anchors.fill: parent
            spacing: Theme.gap

            RowLayout {
                spacing: Theme.space
                Layout.fillWidth: true
                PlainWords {
                    text: panel.instruction
                    kind: "title"
                    Layout.fillWidth: true
                }
                ActionButton {
                    enabled: panel.undoText.length > 0
                    focusPolicy: Qt.TabFocus
                    text: qsTr("Undo")
                    pictogram: "undo"
                    Accessible.name: enabled ? panel.undoText : text
                    onClicked: panel.undone()
                }
                HoldButton {
                    text: qsTr("Hold to unlock")
                    onHeld: panel.close()
                }
            }
            PlainWords {
                visible: text.length > 0
                text: panel.pumpOffText
                color: panel.pumpOffUrgent ? Theme.warningInk : Theme.ink
                font.bold: true
                horizontalAlignment: Text.AlignHCenter
                Layout.fillWidth: true
            }
            PlainWords {
                visible: text.length > 0
                text: panel.problem
                color: Theme.warningInk
                font.bold: true
                Layout.fillWidth: true
            }
            RunningTime {
                text: panel.elapsedText
                label: panel.elapsedLabel
                awakeProblem: panel.awakeProblem
                Layout.fillWidth: true
            }
            MarkButton {
                text: panel.markText
                detail: panel.markDetail
                enabled: panel.canMark
                onPressed: panel.marked()
                Layout.fillWidth: true
                Layout.fillHeight: true
                Layout.minimumHeight: Theme.markHeight
            }
        }
    }
}
