// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
import Wetfront.ViewModels

// A forgotten switch kills a flock: each line is ticked where the thing is, and printed.
ScrollColumn {
    id: step

    required property VisitViewModel visit

    Card {
        title: qsTr("Before leaving the house")
        note: step.visit.leavingChecks.open > 0 ? qsTr("%1 open").arg(step.visit.leavingChecks.open) : qsTr("all done")
        Layout.fillWidth: true
        Repeater {
            model: step.visit.leavingChecks
            delegate: TickLine {
                required property int index
                required property bool done
                enabled: !step.visit.frozen
                ticked: done
                onToggled: wanted => step.visit.leavingChecks.tick(index, wanted)
                Layout.fillWidth: true
            }
        }
    }
    PhotosCard {
        photos: step.visit.photos
        readOnly: step.visit.frozen
        Layout.fillWidth: true
    }
    CautionList {
        visit: step.visit
        Layout.fillWidth: true
    }
}
