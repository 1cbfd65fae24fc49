// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
import Wetfront.ViewModels

// Today's air, what was measured at the banks and the pumps, and the water. What a visit needs is in sight, the rest folded.
ScrollColumn {
    id: step

    required property VisitViewModel visit
    required property NumberPad pad
    readonly property ConditionsViewModel conditions: visit.conditions

    FormCard {
        title: qsTr("Air")
        form: step.conditions.air
        pad: step.pad
        readOnly: step.visit.frozen
        Layout.fillWidth: true
    }
    Card {
        title: qsTr("At each bank")
        Layout.fillWidth: true
        Repeater {
            model: step.conditions.atBanks
            delegate: ColumnLayout {
                id: bank
                required property string title
                required property FormModel more
                required property var results
                Layout.fillWidth: true
                FoldedForm {
                    title: qsTr("%1: air speed at several points, temperature behind, water caught").arg(bank.title)
                    form: bank.more
                    pad: step.pad
                    readOnly: step.visit.frozen
                    Layout.fillWidth: true
                }
                ResultLines {
                    lines: bank.results
                    Layout.fillWidth: true
                }
            }
        }
    }
    Repeater {
        model: step.conditions.flows
        delegate: FormCard {
            id: pump
            required title
            required property FormModel more
            required property var results
            pad: step.pad
            readOnly: step.visit.frozen
            Layout.fillWidth: true
            FoldedForm {
                title: qsTr("Flow by drawdown or meter")
                form: pump.more
                pad: step.pad
                readOnly: step.visit.frozen
                Layout.fillWidth: true
            }
            ResultLines {
                lines: pump.results
                Layout.fillWidth: true
            }
        }
    }
    PhotosCard {
        photos: step.visit.photos
        readOnly: step.visit.frozen
        Layout.fillWidth: true
    }
    Card {
        title: qsTr("For whoever wants to know more")
        Layout.fillWidth: true
        FoldedForm {
            title: qsTr("Water test")
            form: step.conditions.water
            pad: step.pad
            readOnly: step.visit.frozen
            Layout.fillWidth: true
        }
        FoldedForm {
            title: qsTr("How good the instruments are")
            form: step.conditions.instruments
            pad: step.pad
            readOnly: step.visit.frozen
            Layout.fillWidth: true
        }
        AirFold {
            picture: step.conditions.airPicture
            words: step.conditions.airWords
            Layout.fillWidth: true
        }
    }
    CautionList {
        visit: step.visit
        Layout.fillWidth: true
    }
}
