// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
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
            step.problem = step.settings.copyAdvice();
            step.taken = step.problem.length === 0;
        }
    }
    StyledText {
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
    CautionList {
        visit: step.visit
        Layout.fillWidth: true
    }
}
