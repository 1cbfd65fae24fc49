// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
import Wetfront.Theme
import Wetfront.ViewModels

// The hottest day as the timers stand and as they are advised to stand: one picture, what it comes to, and one sentence.
Fold {
    id: fold

    required property DayViewModel day

    title: qsTr("The hottest day, hour by hour")
    summary: qsTr("found and advised laid over each other")

    content: Component {
        ColumnLayout {
            id: opened
            // Its own: when a page goes, what is around it goes first.
            readonly property DayViewModel day: fold.day
            readonly property var picture: day.picture
            readonly property bool drawable: picture["plans"] !== undefined
            readonly property var assumed: day.assumed
            spacing: Theme.space
            Layout.fillWidth: true
            Component.onCompleted: day.show()
            Component.onDestruction: day.hide()

            PlainWords {
                visible: text.length > 0
                text: opened.day.sentence
                font.bold: true
                Layout.fillWidth: true
            }
            Repeater {
                model: opened.day.missing
                delegate: PlainWords {
                    required property string modelData
                    text: Sentence.fill(qsTr("For this day there lacks: %1"), [modelData])
                    color: Theme.warningInk
                    Layout.fillWidth: true
                }
            }
            DayPicture {
                day: opened.day
                Layout.fillWidth: true
            }
            PlainWords {
                visible: opened.drawable
                text: Sentence.fill(qsTr("Thick: %1. Thin and broken: found. Dotted: the air outside."), [opened.day.second])
                kind: "small"
                soft: true
                Layout.fillWidth: true
            }
            DayTable {
                rows: opened.day.rows
                second: opened.day.second
                Layout.fillWidth: true
            }
            ActionButton {
                visible: opened.drawable
                text: qsTr("Is there a cheaper cycle?")
                pictogram: "lens"
                onClicked: opened.day.searchCheapest()
            }
            Repeater {
                model: opened.day.cheapest
                delegate: PlainWords {
                    required property string modelData
                    text: modelData
                    font.bold: true
                    Layout.fillWidth: true
                }
            }
            PlainWords {
                visible: opened.assumed.length > 0
                text: Sentence.fill(qsTr("Assumed: %1"), [opened.assumed.join("; ")])
                kind: "small"
                soft: true
                Layout.fillWidth: true
            }
            PlainWords {
                visible: opened.drawable && opened.day.weatherFiles.length === 0
                text: qsTr("For a season, put a weather file (EPW, or CSV with weather in its name) with the documents or on a stick.")
                kind: "small"
                soft: true
                Layout.fillWidth: true
            }
            Repeater {
                model: opened.drawable ? opened.day.weatherFiles : []
                delegate: ActionButton {
                    required property var modelData
                    text: Sentence.fill(qsTr("Work out the season of %1"), [modelData.text])
                    pictogram: "clock"
                    onClicked: opened.day.simulate(modelData.value)
                    Layout.fillWidth: true
                }
            }
            PlainWords {
                visible: text.length > 0
                text: opened.day.seasonWords
                font.bold: true
                Accessible.role: Accessible.AlertMessage
                Accessible.name: text
                Layout.fillWidth: true
            }
            DayTable {
                rows: opened.day.seasonRows
                second: qsTr("advised")
                Layout.fillWidth: true
            }
            WorkPanel {
                working: opened.day.busy
                text: opened.day.busyText
                progress: opened.day.progress
                cancellable: opened.day.stoppable
                onCancelAsked: opened.day.stop()
            }
        }
    }
}
