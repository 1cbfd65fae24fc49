// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
import Wetfront.ViewModels

// Today's air, the pumps' flow and the water.
ScrollColumn {
    id: step

    required property VisitViewModel visit
    required property NumberPad pad

    FormCard {
        title: qsTr("Air")
        form: step.visit.conditions.air
        pad: step.pad
        readOnly: step.visit.frozen
        Layout.fillWidth: true
    }
    FormCard {
        title: qsTr("Flow of each pump")
        form: step.visit.conditions.flows
        pad: step.pad
        readOnly: step.visit.frozen
        Layout.fillWidth: true
    }
    FormCard {
        title: qsTr("Water, where there is a kit")
        form: step.visit.conditions.water
        pad: step.pad
        readOnly: step.visit.frozen
        Layout.fillWidth: true
    }
    CautionList {
        visit: step.visit
        Layout.fillWidth: true
    }
}
