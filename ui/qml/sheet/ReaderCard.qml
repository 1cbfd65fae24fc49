// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls

// Language, units and paper of the sheet's reader, who is not the one who makes it.
Card {
    id: card

    required property var languages
    required property string language
    required property string units
    required property string paper

    signal languageChosen(string value)
    signal unitsChosen(string value)
    signal paperChosen(string value)

    title: qsTr("The sheet's reader")

    ChoiceRow {
        label: qsTr("Language of the sheet")
        model: card.languages
        current: card.language
        onChosen: value => card.languageChosen(value)
        Layout.fillWidth: true
    }
    ChoiceRow {
        label: qsTr("Units of the sheet")
        model: [
            {
                value: "us",
                text: qsTr("°F, ft, gpm")
            },
            {
                value: "si",
                text: qsTr("°C, m, L/min")
            }
        ]
        current: card.units
        onChosen: value => card.unitsChosen(value)
        Layout.fillWidth: true
    }
    ChoiceRow {
        label: qsTr("Paper")
        model: [
            {
                value: "letter",
                text: qsTr("Letter")
            },
            {
                value: "a4",
                text: qsTr("A4")
            }
        ]
        current: card.paper
        onChosen: value => card.paperChosen(value)
        Layout.fillWidth: true
    }
}
