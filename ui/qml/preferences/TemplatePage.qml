// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
import Wetfront.Theme
import Wetfront.ViewModels

// One setting template: what the controller is, its settings by the four questions, in which order it asks, what it demands
// between them, and the way to a file.
Item {
    id: page

    required property SessionViewModel session
    required property TemplateViewModel described
    property string outcome

    ScrollColumn {
        anchors.fill: parent

        ErrorLine {
            text: page.described.problem.length > 0 ? qsTr("Cannot be used yet. %1").arg(page.described.problem) : ""
            Layout.fillWidth: true
        }
        Card {
            title: qsTr("The controller")
            Layout.fillWidth: true
            TextFieldRow {
                label: qsTr("Name")
                text: page.described.name
                onEdited: text => errorText = page.described.enter("name", text)
                Layout.fillWidth: true
            }
            TextFieldRow {
                label: qsTr("Note")
                text: page.described.note
                onEdited: text => errorText = page.described.enter("note", text)
                Layout.fillWidth: true
            }
            TemplateChoice {
                label: qsTr("Kind of timer")
                model: page.described.kinds
                current: page.described.kind
                onChosen: value => problem = page.described.enter("kind", value)
                Layout.fillWidth: true
            }
            TemplateChoice {
                label: qsTr("Its on-time counts from")
                model: page.described.countsFromChoices
                current: page.described.countsFrom
                onChosen: value => problem = page.described.enter("counts_from", value)
                Layout.fillWidth: true
            }
        }
        Repeater {
            model: page.described.groups
            delegate: TemplateGroup {
                required property var modelData
                title: modelData.title
                described: page.described
                lines: modelData.settings
                pad: numberPad
                moreShown: modelData.asksTrimRows && page.described.trimRowsShown
                Layout.fillWidth: true
                TemplateChoice {
                    label: qsTr("Trim rows")
                    model: [
                        {
                            value: "",
                            text: qsTr("none")
                        },
                        {
                            value: "1",
                            text: qsTr("1 row")
                        },
                        {
                            value: "2",
                            text: qsTr("2 rows")
                        },
                        {
                            value: "3",
                            text: qsTr("3 rows")
                        },
                        {
                            value: "4",
                            text: qsTr("4 rows")
                        }
                    ]
                    current: page.described.trimRows
                    standing: page.described.trimRowsProblem
                    onChosen: value => problem = page.described.enter("trim_rows", value)
                    Layout.fillWidth: true
                }
            }
        }
        TemplateOrder {
            described: page.described
            Layout.fillWidth: true
        }
        Card {
            title: qsTr("What it demands between settings")
            Layout.fillWidth: true
            Repeater {
                model: page.described.demands
                delegate: ColumnLayout {
                    id: demand
                    required property var modelData
                    readonly property var about: page.described.demanded[modelData.value]
                    property string problem
                    visible: about.shown
                    spacing: 0
                    Layout.fillWidth: true
                    TickLine {
                        text: demand.modelData.text
                        ticked: demand.about.ticked
                        onToggled: wanted => demand.problem = page.described.demand(demand.modelData.value, wanted)
                        Layout.fillWidth: true
                    }
                    ErrorLine {
                        text: demand.problem.length > 0 ? demand.problem : demand.about.problem
                        Layout.fillWidth: true
                    }
                }
            }
        }
        Card {
            title: qsTr("As a file, for another tablet")
            Layout.fillWidth: true
            Flow {
                spacing: Theme.gap
                Layout.fillWidth: true
                Repeater {
                    model: page.described.folders
                    delegate: ActionButton {
                        required property string modelData
                        required property int index
                        text: index === 0 ? qsTr("Write to documents") : qsTr("Write to %1").arg(modelData)
                        pictogram: "sheet"
                        onClicked: page.outcome = page.described.writeTo(modelData)
                    }
                }
                ActionButton {
                    text: qsTr("Look for sticks")
                    onClicked: {
                        page.described.lookForFolders();
                        page.outcome = page.described.folders.length > 1 ? "" : qsTr("No stick is plugged in.");
                    }
                }
            }
            PlainWords {
                visible: text.length > 0
                text: page.outcome
                font.bold: true
                Layout.fillWidth: true
                Accessible.role: Accessible.StaticText
                Accessible.name: text
            }
        }
    }
    NumberPad {
        id: numberPad
        decimalMark: page.session.decimalMark
    }
}
