// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
import Wetfront.Theme
import Wetfront.ViewModels

// What was done to pads, outlets and pumps, the latest first.
Card {
    id: card

    required property MaintenanceViewModel maintenance
    required property bool readOnly

    title: qsTr("Maintenance")

    PlainWords {
        text: card.maintenance.events.length === 0 ? qsTr("Nothing is entered yet. Cleaned outlets, new pads or a new pump start a new comparison.") : qsTr("Each starts a new comparison of what it concerns.")
        soft: true
        Layout.fillWidth: true
    }
    Repeater {
        model: card.maintenance.events
        delegate: RowLayout {
            id: event
            required property var modelData
            spacing: Theme.space
            Layout.fillWidth: true
            Pictogram {
                name: "wrench"
                colour: Theme.water
            }
            ColumnLayout {
                spacing: 0
                Layout.fillWidth: true
                PlainWords {
                    text: event.modelData.title
                    font.bold: true
                    Layout.fillWidth: true
                }
                PlainWords {
                    text: event.modelData.detail
                    soft: true
                    Layout.fillWidth: true
                }
            }
            ActionButton {
                visible: !card.readOnly
                pictogram: "bin"
                Accessible.name: Sentence.fill(qsTr("Take out: %1"), [event.modelData.title])
                onClicked: card.maintenance.takeOut(event.modelData.id)
            }
        }
    }
    ActionButton {
        visible: !card.readOnly
        text: qsTr("Enter maintenance")
        pictogram: "plus"
        onClicked: panel.ask()
    }
    Loader {
        id: panel
        function ask(): void {
            setSource("qrc:/qt/qml/Wetfront/History/MaintenancePanel.qml", {
                maintenance: card.maintenance
            });
        }
    }
}
