// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
import Wetfront.Theme
import Wetfront.ViewModels

// What stands in each timer, found or left, by the four questions of a grower.
ScrollColumn {
    id: step

    required property VisitViewModel visit
    required property SettingsViewModel settings
    required property NumberPad pad
    required property var findings  // on these settings, worst first
    property string problem

    // Findings are of one timer: the one at hand.
    Component.onCompleted: visit.advice.timer = settings.timer
    property bool taken: false

    function takeOver(): void {
        problem = settings.copyAdvice();
        taken = problem.length === 0;
    }

    ConfirmPanel {
        id: overwrite
    }

    ChoiceRow {
        visible: step.settings.timers.length > 1
        label: qsTr("Timer")
        model: step.settings.timers
        current: step.settings.timer
        onChosen: value => {
            step.settings.timer = value;
            step.visit.advice.timer = value;
        }
        Layout.fillWidth: true
    }
    Repeater {
        model: step.findings
        delegate: FindingCard {
            required property var modelData
            severity: modelData.severity
            message: modelData.message
            remedy: modelData.remedy
            source: modelData.source
            causes: modelData.causes
            Layout.fillWidth: true
        }
    }
    ActionButton {
        visible: step.settings.canCopy
        text: qsTr("Take over the advice")
        pictogram: "down"
        kind: "primary"
        onClicked: {
            const lost = step.settings.overwritten();
            if (lost.length === 0)
                step.takeOver();
            else
                overwrite.ask({
                    question: qsTr("Put the advice in place of what is entered?"),
                    detail: lost.join("\n"),
                    keepText: qsTr("Keep what is entered"),
                    doText: qsTr("Put the advice in its place"),
                    act: () => step.takeOver()
                });
        }
    }
    PlainWords {
        visible: step.taken
        text: qsTr("Taken over. Enter it in the controller, then check each line against it.")
        font.bold: true
        Layout.fillWidth: true
    }
    ErrorLine {
        text: step.problem
        Layout.fillWidth: true
    }
    FormCard {
        title: qsTr("How long")
        form: step.settings.howLong
        pad: step.pad
        readOnly: step.visit.frozen
        Layout.fillWidth: true
    }
    FormCard {
        title: qsTr("How it adapts")
        form: step.settings.howItAdapts
        pad: step.pad
        readOnly: step.visit.frozen
        Layout.fillWidth: true
    }
    FormCard {
        title: qsTr("When pads may run")
        form: step.settings.whenPadsMayRun
        pad: step.pad
        readOnly: step.visit.frozen
        Layout.fillWidth: true
    }
    FormCard {
        title: qsTr("Rinse")
        form: step.settings.rinse
        pad: step.pad
        readOnly: step.visit.frozen
        Layout.fillWidth: true
    }
    FormCard {
        title: qsTr("What the controller itself was told and shows")
        form: step.settings.evidence
        pad: step.pad
        readOnly: step.visit.frozen
        Layout.fillWidth: true
    }
    Card {
        visible: step.settings.differences.length > 0 || step.settings.whyDifferent.count > 0
        title: qsTr("Differs from the advice")
        Layout.fillWidth: true
        Repeater {
            model: step.settings.differences
            delegate: ColumnLayout {
                id: difference
                required property var modelData
                spacing: 0
                Layout.fillWidth: true
                PlainWords {
                    text: Sentence.fill(qsTr("≠ %1: %2"), [difference.modelData.label, difference.modelData.text])
                    color: Theme.warningInk
                    Layout.fillWidth: true
                }
                PlainWords {
                    text: difference.modelData.meaning
                    kind: "small"
                    Layout.fillWidth: true
                }
            }
        }
        Repeater {
            model: step.settings.whyDifferent
            delegate: FormLine {
                form: step.settings.whyDifferent
                pad: step.pad
                readOnly: step.visit.frozen
                Layout.fillWidth: true
            }
        }
    }
    CautionList {
        visit: step.visit
        Layout.fillWidth: true
    }
}
