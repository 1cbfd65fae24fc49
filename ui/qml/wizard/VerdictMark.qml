// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import Wetfront.Charts
import Wetfront.Theme

// The shape that stands for a verdict: pass a circle with a tick, fail a square with a cross, too close to call a rhombus
// with a wave, none yet a dash.
Item {
    id: mark

    required property string verdict  // "pass", "fail", "close" or "open"
    property real size: Theme.pictogram

    readonly property real grid: 24
    readonly property bool warns: verdict === "fail"
    readonly property var outlines: ({
            "pass": "M2 12 a10 10 0 1 0 20 0 a10 10 0 1 0 -20 0",
            "fail": "M2 2 H22 V22 H2 Z",
            "close": "M12 1 L23 12 L12 23 L1 12 Z"
        })
    readonly property var signs: ({
            "pass": "M7 12.5 L11 16.5 L17.5 8",
            "fail": "M7 7 L17 17 M17 7 L7 17",
            "close": "M6.5 13.5 C8.5 9.5 10.5 10 12 12 C13.5 14 15.5 14.5 17.5 10.5",
            "open": "M7 12 H17"
        })

    implicitWidth: size
    implicitHeight: size
    Accessible.ignored: true

    LineArtItem {
        anchors.fill: parent
        path: mark.outlines[mark.verdict] ?? ""
        grid: mark.grid
        colour: mark.warns ? Theme.warning : mark.verdict === "pass" ? Theme.water : Theme.ink
        fill: mark.warns ? Theme.warning : "transparent"
        thickness: mark.size / 12
    }
    LineArtItem {
        anchors.fill: parent
        path: mark.signs[mark.verdict] ?? ""
        grid: mark.grid
        colour: mark.warns ? Theme.warningPaper : mark.verdict === "pass" ? Theme.water : mark.verdict === "open" ? Theme.inkSoft : Theme.ink
        thickness: mark.size / 9
    }
}
