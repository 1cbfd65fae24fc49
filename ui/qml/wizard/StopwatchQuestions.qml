// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
import Wetfront.Theme
import Wetfront.ViewModels

// What has to be said before the pump is switched: who does it, how wet the pads are, whether the fans run.
ScrollColumn {
    id: questions

    required property VisitViewModel visit
    required property StopwatchViewModel stopwatch

    margin: 0

    ChoiceRow {
        label: questions.stopwatch.asksStop ? qsTr("Who stops the pump?") : qsTr("Who starts the pump?")
        model: [
            {
                value: "me here",
                text: qsTr("I, here")
            },
            {
                value: "me then walk",
                text: qsTr("I, and walk")
            },
            {
                value: "helper on signal",
                text: qsTr("Helper")
            },
            {
                value: "controller",
                text: qsTr("Timer")
            }
        ]
        current: questions.stopwatch.startedBy
        onChosen: value => questions.stopwatch.startedBy = value
        Layout.fillWidth: true
    }
    GridLayout {
        columns: questions.width > Theme.mm(75) ? 2 : 1
        columnSpacing: Theme.space
        rowSpacing: Theme.gap
        Layout.fillWidth: true
        ChoiceRow {
            label: qsTr("Fans")
            model: [
                {
                    value: "no",
                    text: qsTr("Off")
                },
                {
                    value: "yes",
                    text: qsTr("Running")
                }
            ]
            current: questions.stopwatch.fans
            onChosen: value => questions.stopwatch.fans = value
            Layout.fillWidth: true
            Layout.alignment: Qt.AlignTop
        }
        ChoiceRow {
            label: qsTr("Pads")
            model: [
                {
                    value: "dry",
                    text: qsTr("Dry")
                },
                {
                    value: "dripping",
                    text: qsTr("Dripping")
                },
                {
                    value: "not dry",
                    text: qsTr("Between")
                }
            ]
            current: questions.stopwatch.pads
            onChosen: value => questions.stopwatch.pads = value
            Layout.fillWidth: true
            Layout.alignment: Qt.AlignTop
        }
    }
    CautionList {
        visit: questions.visit
        Layout.fillWidth: true
    }
}
