// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
import Wetfront.Theme
import Wetfront.ViewModels

// The sheets of many visits: of which houses and days, as what, and where to.
Item {
    id: page

    required property SessionViewModel session
    readonly property SheetsViewModel sheets: session.sheets

    ScrollColumn {
        anchors.fill: parent

        PlainWords {
            text: qsTr("Sheets of many visits")
            kind: "heading"
            Layout.fillWidth: true
        }
        Card {
            title: qsTr("Which")
            Layout.fillWidth: true
            ChoiceRow {
                label: qsTr("Houses")
                model: page.sheets.places
                current: page.sheets.place
                onChosen: value => page.sheets.place = value
                Layout.fillWidth: true
            }
            ChoiceRow {
                label: qsTr("Days")
                model: page.sheets.spans
                current: page.sheets.span
                onChosen: value => page.sheets.span = value
                Layout.fillWidth: true
            }
            ChoiceRow {
                label: qsTr("Visits")
                model: [
                    {
                        value: "signed",
                        text: qsTr("Every signed one")
                    },
                    {
                        value: "last",
                        text: qsTr("Last of each house")
                    }
                ]
                current: page.sheets.visits
                onChosen: value => page.sheets.visits = value
                Layout.fillWidth: true
            }
            ChoiceRow {
                label: qsTr("As what")
                model: [
                    {
                        value: false,
                        text: qsTr("Sheets")
                    },
                    {
                        value: true,
                        text: qsTr("Summaries for the grower")
                    }
                ]
                current: page.sheets.summaries
                onChosen: value => page.sheets.summaries = value
                Layout.fillWidth: true
            }
            PlainWords {
                visible: !page.sheets.summaries
                text: qsTr("A sheet that was kept at the signing comes as it was handed out; all others are drawn for the reader below.")
                soft: true
                Layout.fillWidth: true
            }
        }
        Card {
            title: qsTr("Where to")
            Layout.fillWidth: true
            Flow {
                spacing: Theme.gap
                Layout.fillWidth: true
                ActionButton {
                    text: qsTr("Print them")
                    pictogram: "printer"
                    kind: "primary"
                    onClicked: page.sheets.print()
                }
                ActionButton {
                    text: qsTr("Onto this tablet")
                    pictogram: "sheet"
                    Accessible.description: page.sheets.folder
                    onClicked: page.sheets.writeToFolder()
                }
                Repeater {
                    model: page.sheets.media
                    delegate: ActionButton {
                        required property string modelData
                        text: qsTr("Onto %1").arg(modelData)
                        pictogram: "stick"
                        onClicked: page.sheets.writeTo(modelData)
                    }
                }
                ActionButton {
                    text: qsTr("Look for sticks")
                    onClicked: page.sheets.look()
                }
            }
            PlainWords {
                visible: page.sheets.media.length === 0
                text: qsTr("No stick is plugged in.")
                soft: true
                Layout.fillWidth: true
            }
            PlainWords {
                visible: text.length > 0
                text: page.sheets.outcome
                font.bold: true
                Accessible.role: Accessible.AlertMessage
                Accessible.name: text
                Layout.fillWidth: true
            }
            ErrorLine {
                text: page.sheets.problem
                Layout.fillWidth: true
            }
            Repeater {
                model: page.sheets.missing
                delegate: ErrorLine {
                    required property string modelData
                    text: modelData
                    Layout.fillWidth: true
                }
            }
        }
        ReaderCard {
            languages: page.sheets.languages
            language: page.sheets.language
            units: page.sheets.units
            paper: page.sheets.paper
            onLanguageChosen: value => page.sheets.language = value
            onUnitsChosen: value => page.sheets.units = value
            onPaperChosen: value => page.sheets.paper = value
            Layout.fillWidth: true
        }
    }

    WorkPanel {
        text: page.sheets.busyText
        progress: page.sheets.progress
        cancellable: page.sheets.stoppable
        working: page.sheets.busy
        onCancelAsked: page.sheets.stop()
    }
}
