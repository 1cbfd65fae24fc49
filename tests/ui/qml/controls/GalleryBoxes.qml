// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls

ScrollColumn {
    id: page

    FindingCard {
        severity: "harm"
        message: "The humidity cut-off is below the humidity that the pads make."
        consequence: "The pads shut off while they cool; birds can be lost."
        remedy: "Set the cut-off to 85 % or hang the sensor outside."
        source: "invented for this page"
        expanded: true
        hasReason: true
        Layout.fillWidth: true
    }
    FindingCard {
        severity: "fault"
        message: "The ceiling is below the wet-through time."
        remedy: "Raise the ceiling to 200 s."
        source: "invented for this page"
        Layout.fillWidth: true
    }
    FindingCard {
        severity: "waste"
        message: "The pump never rests."
        remedy: "A cycle of 85 s every 5 min cools the same."
        Layout.fillWidth: true
    }
    FindingCard {
        severity: "note"
        message: "Bank 2 fills 12 s later than bank 1."
        Layout.fillWidth: true
    }
    CautionBox {
        level: "danger"
        message: "Water and electricity: a wet pump can kill. Switch off and lock the breaker before you touch it."
        source: "invented for this page"
        expanded: true
        Layout.fillWidth: true
    }
    CautionBox {
        level: "notice"
        message: "An open flush valve empties the sump."
        source: "common practice, no source"
        Layout.fillWidth: true
    }
    EmptyHint {
        text: "No house yet"
        detail: "Houses stand here with what was last found in them."
        pictogram: "house"
        actionText: "Describe a house"
        Layout.fillWidth: true
    }
}
