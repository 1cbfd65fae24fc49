// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
import Wetfront.Theme
import Wetfront.ViewModels

// One thing that was done, with today's date; everything is chosen, nothing has to be typed. Opens as it is loaded.
Item {
    id: asked

    required property MaintenanceViewModel maintenance

    Component.onCompleted: {
        maintenance.begin();
        panel.open();
    }

    Panel {
        id: panel

        title: qsTr("Maintenance")
        contentHeight: body.implicitHeight

        ScrollColumn {
            id: body
            anchors.fill: parent
            margin: 0
            PlainWords {
                text: panel.title
                kind: "heading"
                Layout.fillWidth: true
            }
            ChoiceRow {
                label: qsTr("What was done?")
                model: asked.maintenance.kinds
                current: asked.maintenance.what
                onChosen: value => asked.maintenance.what = value
                Layout.fillWidth: true
            }
            ChoiceRow {
                visible: asked.maintenance.toPump
                label: qsTr("Which pump?")
                model: asked.maintenance.pumps
                current: asked.maintenance.pump
                onChosen: value => asked.maintenance.pump = value
                Layout.fillWidth: true
            }
            PlainWords {
                visible: !asked.maintenance.toPump
                text: qsTr("Which banks?")
                Layout.fillWidth: true
            }
            Repeater {
                model: asked.maintenance.toPump ? [] : asked.maintenance.banks
                delegate: TickLine {
                    required property var modelData
                    text: modelData.text
                    ticked: modelData.chosen
                    onToggled: asked.maintenance.toggleBank(modelData.id)
                    Layout.fillWidth: true
                }
            }
            PlainWords {
                text: Sentence.fill(qsTr("Day: %1"), [asked.maintenance.day])
                kind: "title"
                Layout.fillWidth: true
            }
            Flow {
                spacing: Theme.gap
                Layout.fillWidth: true
                ActionButton {
                    text: qsTr("A month earlier")
                    onClicked: asked.maintenance.moveMonth(-1)
                }
                ActionButton {
                    text: qsTr("A day earlier")
                    onClicked: asked.maintenance.moveDay(-1)
                }
                ActionButton {
                    text: qsTr("A day later")
                    enabled: !asked.maintenance.today
                    onClicked: asked.maintenance.moveDay(1)
                }
                ActionButton {
                    text: qsTr("A month later")
                    enabled: !asked.maintenance.today
                    onClicked: asked.maintenance.moveMonth(1)
                }
            }
            PlainWords {
                text: qsTr("A visit of the same day counts as after it.")
                kind: "small"
                soft: true
                Layout.fillWidth: true
            }
            TextFieldRow {
                label: qsTr("Note")
                hint: qsTr("May be left empty.")
                text: asked.maintenance.note
                onEdited: text => asked.maintenance.note = text
                Layout.fillWidth: true
            }
            RowLayout {
                spacing: Theme.gap
                Layout.alignment: Qt.AlignRight
                ActionButton {
                    text: qsTr("Cancel")
                    onClicked: panel.close()
                }
                ActionButton {
                    text: qsTr("Enter")
                    kind: "primary"
                    enabled: asked.maintenance.complete
                    onClicked: {
                        panel.close();
                        asked.maintenance.enter();
                    }
                }
            }
        }
    }
}
