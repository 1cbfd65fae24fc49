// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
import Wetfront.Sheet
import Wetfront.Theme
import Wetfront.ViewModels

// The wizard: its steps at the side (on top in portrait), in any order, and the step one is at.
FocusScope {
    id: page

    required property SessionViewModel session
    required property VisitViewModel visit

    NumberPad {
        id: numberPad
        decimalMark: page.session.decimalMark
    }
    ReasonSheet {
        id: reasonSheet
    }
    ConfirmPanel {
        id: confirmPanel
    }

    GridLayout {
        anchors.fill: parent
        columns: page.width > page.height ? 2 : 1
        columnSpacing: 0
        rowSpacing: 0

        RowLayout {
            spacing: 0
            Layout.fillWidth: page.width <= page.height
            Layout.fillHeight: page.width > page.height
            StepTabs {
                model: page.visit.steps
                current: page.visit.step
                vertical: page.width > page.height
                onChosen: index => page.visit.step = index
                Layout.fillWidth: page.width <= page.height
                Layout.fillHeight: page.width > page.height
            }
            // In landscape they are in the line on top, which has no room for them here.
            EntryUndo {
                visible: page.Window.width <= page.Window.height && undo !== null && undo.offered
                undo: page.visit.entryUndo
                named: false
                Layout.margins: Theme.gap
            }
        }
        // Only the step that one is at exists.
        Item {
            id: place
            Layout.fillWidth: true
            Layout.fillHeight: true

            Repeater {
                model: page.visit.step === 0 ? 1 : 0
                delegate: SafetyStep {
                    anchors.fill: place
                    visit: page.visit
                    pad: numberPad
                }
            }
            Repeater {
                model: page.visit.step === 1 ? 1 : 0
                delegate: HouseStep {
                    anchors.fill: place
                    visit: page.visit
                    pad: numberPad
                }
            }
            Repeater {
                model: page.visit.step === 2 ? 1 : 0
                delegate: TimeStep {
                    anchors.fill: place
                    session: page.session
                    visit: page.visit
                    confirm: confirmPanel
                }
            }
            Repeater {
                model: page.visit.step === 3 ? 1 : 0
                delegate: ConditionsStep {
                    anchors.fill: place
                    visit: page.visit
                    pad: numberPad
                }
            }
            Repeater {
                model: page.visit.step === 4 ? 1 : 0
                delegate: SettingsStep {
                    anchors.fill: place
                    visit: page.visit
                    settings: page.visit.found
                    findings: page.visit.advice.foundSettingFindings
                    pad: numberPad
                }
            }
            Repeater {
                model: page.visit.step === 5 ? 1 : 0
                delegate: AdviceStep {
                    anchors.fill: place
                    visit: page.visit
                    pad: numberPad
                    reasons: reasonSheet
                }
            }
            Repeater {
                model: page.visit.step === 6 ? 1 : 0
                delegate: SettingsStep {
                    anchors.fill: place
                    visit: page.visit
                    settings: page.visit.left
                    findings: page.visit.advice.leftFindings
                    pad: numberPad
                }
            }
            Repeater {
                model: page.visit.step === 7 ? 1 : 0
                delegate: ProofStep {
                    anchors.fill: place
                    session: page.session
                    visit: page.visit
                    pad: numberPad
                }
            }
            Repeater {
                model: page.visit.step === 8 ? 1 : 0
                delegate: LeavingStep {
                    anchors.fill: place
                    visit: page.visit
                }
            }
            Repeater {
                model: page.visit.step === 9 ? 1 : 0
                delegate: SheetStep {
                    anchors.fill: place
                    session: page.session
                    visit: page.visit
                    confirm: confirmPanel
                }
            }
        }
    }
}
