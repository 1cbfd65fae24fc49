// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import Wetfront.Charts
import Wetfront.Theme

// The shape that stands for a severity: harm an octagon, fault a triangle, waste a drop, note a circle.
Item {
    id: mark

    required property string severity
    property real size: Theme.pictogram * 1.5

    readonly property real grid: 24
    readonly property var outlines: ({
            "harm": "M7.5 1 H16.5 L23 7.5 V16.5 L16.5 23 H7.5 L1 16.5 V7.5 Z",
            "fault": "M12 2 L23 22 H1 Z",
            "waste": "M12 1.5 C12 1.5 4 11 4 15.5 A8 7 0 0 0 20 15.5 C20 11 12 1.5 12 1.5 Z",
            "note": "M2 12 a10 10 0 1 0 20 0 a10 10 0 1 0 -20 0"
        })
    readonly property var signs: ({
            "harm": "M12 6 V13 M12 17.5 V17.8",
            "fault": "M12 9 V15 M12 18.5 V18.8",
            "waste": "M8.5 15.5 H15.5",
            "note": "M12 11 V17 M12 7 V7.3"
        })
    readonly property bool warns: severity === "harm" || severity === "fault"

    implicitWidth: size
    implicitHeight: size
    Accessible.ignored: true

    LineArtItem {
        anchors.fill: parent
        path: mark.outlines[mark.severity] ?? ""
        grid: mark.grid
        colour: mark.warns ? Theme.warning : mark.severity === "waste" ? Theme.water : Theme.inkSoft
        fill: mark.severity === "harm" ? Theme.warning : mark.severity === "fault" ? Theme.warningTint : "transparent"
        thickness: mark.size / 12
    }
    LineArtItem {
        anchors.fill: parent
        path: mark.signs[mark.severity] ?? ""
        grid: mark.grid
        colour: mark.severity === "harm" ? Theme.warningPaper : mark.warns ? Theme.warningInk : mark.severity === "waste" ? Theme.water : Theme.inkSoft
        thickness: mark.size / 8
    }
}
