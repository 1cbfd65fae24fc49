// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
import Wetfront.Theme
import Wetfront.ViewModels

// Narrows the list of houses: by words as they are typed, and by what there is to do.
ColumnLayout {
    id: find

    required property HousesModel houses

    readonly property bool narrowed: houses.words.length > 0 || houses.shown !== "all"

    function clear(): void {
        houses.words = "";
        houses.shown = "all";
    }

    onVisibleChanged: if (visible)
        houses.prepareToSeek()

    spacing: Theme.gap

    TextFieldRow {
        label: qsTr("House, farm or customer")
        text: find.houses.words
        handOverAfter: 150
        onEdited: text => find.houses.words = text
        Layout.fillWidth: true
    }
    ChoiceRow {
        label: qsTr("Show")
        model: [
            {
                value: "all",
                text: qsTr("All")
            },
            {
                value: "open",
                text: qsTr("Visit open")
            },
            {
                value: "harm",
                text: qsTr("Harm left")
            },
            {
                value: "fault",
                text: qsTr("Fault or worse left")
            },
            {
                value: "worsening",
                text: qsTr("Getting worse")
            },
            {
                value: "due",
                text: qsTr("Visit due")
            }
        ]
        current: find.houses.shown
        onChosen: value => find.houses.shown = value
        Layout.fillWidth: true
    }
    RowLayout {
        visible: find.narrowed
        spacing: Theme.space
        PlainWords {
            text: find.houses.unasked > 0 ? Sentence.fill(qsTr("%1 of %2 houses, %3 still to look at"), [find.houses.count, find.houses.total, find.houses.unasked]) : Sentence.fill(qsTr("%1 of %2 houses"), [find.houses.count, find.houses.total])
            Accessible.name: text
            Layout.fillWidth: true
        }
        ActionButton {
            text: qsTr("Show all houses")
            kind: "quiet"
            onClicked: find.clear()
        }
    }
}
