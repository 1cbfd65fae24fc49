// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
import Wetfront.ViewModels

// House, banks, pumps, timers and the farm's design day. What is not known is left out, and the line says what is assumed.
ScrollColumn {
    id: step

    required property VisitViewModel visit
    required property NumberPad pad

    FormCard {
        title: qsTr("House")
        form: step.visit.house.house
        pad: step.pad
        readOnly: step.visit.frozen
        Layout.fillWidth: true
        FoldedForm {
            title: qsTr("For a day, hour by hour: birds, fans, prices")
            form: step.visit.house.day
            pad: step.pad
            readOnly: step.visit.frozen
            Layout.fillWidth: true
        }
    }
    PlainWords {
        text: qsTr("Pad banks, seen from outside")
        kind: "title"
        Layout.fillWidth: true
    }
    PartsCard {
        model: step.visit.house.banks
        pad: step.pad
        moreTitle: qsTr("More about the header")
        pictured: true
        addText: qsTr("Add a bank")
        removeText: qsTr("Take %1 out")
        readOnly: step.visit.frozen
        Layout.fillWidth: true
    }
    PlainWords {
        text: qsTr("Pumps")
        kind: "title"
        Layout.fillWidth: true
    }
    PartsCard {
        model: step.visit.house.pumps
        pad: step.pad
        moreTitle: qsTr("Sump, supply pipe and pump curve")
        addText: qsTr("Add a pump")
        removeText: qsTr("Take %1 out")
        readOnly: step.visit.frozen
        Layout.fillWidth: true
    }
    PlainWords {
        text: qsTr("Timers")
        kind: "title"
        Layout.fillWidth: true
    }
    PartsCard {
        model: step.visit.house.timers
        pad: step.pad
        addText: qsTr("Add a timer")
        removeText: qsTr("Take %1 out")
        readOnly: step.visit.frozen
        Layout.fillWidth: true
    }
    FormCard {
        title: qsTr("Farm and its design day")
        form: step.visit.house.farm
        pad: step.pad
        readOnly: step.visit.frozen
        Layout.fillWidth: true
        LimitsFold {
            limits: step.visit.limits
            pad: step.pad
            readOnly: step.visit.frozen
            Layout.fillWidth: true
        }
    }
    CautionList {
        visit: step.visit
        Layout.fillWidth: true
    }
}
