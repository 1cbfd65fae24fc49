// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import Wetfront.Charts
import Wetfront.Theme

// A line drawing on a grid of 24 by 24 units.
Item {
    id: pictogram

    property string name
    property real size: Theme.pictogram
    property color colour: enabled ? Theme.ink : Theme.disabledInk

    readonly property real grid: 24
    readonly property var paths: ({
            "back": "M15 4 L7 12 L15 20",
            "backspace": "M8 5 H21 V19 H8 L2 12 Z M11 9 L17 15 M17 9 L11 15",
            "bin": "M4 6 H20 M9 6 V3 H15 V6 M6 6 L7 21 H17 L18 6 M10 10 V17 M14 10 V17",
            "camera": "M3 7 H8 L10 4 H14 L16 7 H21 V20 H3 Z M8 13 a4 4 0 1 0 8 0 a4 4 0 1 0 -8 0",
            "clock": "M3 12 a9 9 0 1 0 18 0 a9 9 0 1 0 -18 0 M12 6 V12 L16 15",
            "cross": "M6 6 L18 18 M18 6 L6 18",
            "down": "M4 8 L12 16 L20 8",
            "drop": "M12 3 C12 3 5 11 5 15.5 A7 6 0 0 0 19 15.5 C19 11 12 3 12 3 Z",
            "fan": "M12 12 C7 5 13 1 15.5 4.5 C17 8 14 10 12 12 C20 10 23 17 18.5 18.5 C15 19 13 15 12 12 C9 20 2 17 4 13 C6 10 9 11 12 12",
            "farm": "M1 13 L7 7 L13 13 M2 12 V20 H12 V12 M13 12 L17 8 L23 14 M15 20 H22 V13",
            "forward": "M9 4 L17 12 L9 20",
            "house": "M1 12 L12 5 L23 12 M3 11 V20 H21 V11 M7 20 V14 H12 V20",
            "info": "M3 12 a9 9 0 1 0 18 0 a9 9 0 1 0 -18 0 M12 11 V17 M12 7 V7.2",
            "lens": "M3 10 a7 7 0 1 0 14 0 a7 7 0 1 0 -14 0 M15 15 L21 21",
            "list": "M8 6 H21 M8 12 H21 M8 18 H21 M3 6 H3.2 M3 12 H3.2 M3 18 H3.2",
            "minus": "M4 12 H20",
            "moon": "M19 15 A8.5 8.5 0 1 1 10 4 A7 7 0 0 0 19 15 Z",
            "pad": "M4 3 H20 V21 H4 Z M4 11 L12 3 M4 19 L20 3 M10 21 L20 11",
            "pencil": "M4 20 L5 15 L16 4 L20 8 L9 19 Z M14 6 L18 10",
            "plus": "M4 12 H20 M12 4 V20",
            "printer": "M7 9 V3 H17 V9 M7 17 H3 V9 H21 V17 H17 M7 14 H17 V21 H7 Z",
            "problem": "M12 3 L22 20 H2 Z M12 9 V14 M12 17 V17.2",
            "pump": "M3 15 a7 7 0 1 0 14 0 a7 7 0 1 0 -14 0 M17 15 V4 H22 M10 15 L14 12 M10 15 L6 14 M10 15 L11 19",
            "redo": "M15 4 L20 9 L15 14 M20 9 H10 A6 6 0 0 0 10 21 H15",
            "shade": "M6 18 H18 A4 4 0 0 0 18 10 A6 6 0 0 0 6.5 11 A3.5 3.5 0 0 0 6 18 Z",
            "sheet": "M5 2 H15 L19 6 V22 H5 Z M8 10 H16 M8 14 H16 M8 18 H13",
            "stick": "M8 9 V3 H16 V9 M6 9 H18 V22 H6 Z M11 5 V6.5 M13 5 V6.5",
            "sun": "M8 12 a4 4 0 1 0 8 0 a4 4 0 1 0 -8 0 M12 2 V4 M12 20 V22 M2 12 H4 M20 12 H22 M5 5 L6.4 6.4 M17.6 17.6 L19 19 M5 19 L6.4 17.6 M17.6 6.4 L19 5",
            "tick": "M4 13 L10 19 L20 6",
            "undo": "M9 4 L4 9 L9 14 M4 9 H14 A6 6 0 0 1 14 21 H9",
            "up": "M4 16 L12 8 L20 16",
            "wrench": "M14 7 A5 5 0 0 1 20 3 L17.5 6.5 L20.5 8 L22 5 A5 5 0 0 1 16 11 L6 21 L3 18 L13 9"
        })

    implicitWidth: size
    implicitHeight: size
    Accessible.ignored: true

    LineArtItem {
        anchors.fill: parent
        path: pictogram.paths[pictogram.name] ?? ""
        grid: pictogram.grid
        colour: pictogram.colour
        thickness: pictogram.size / 10
    }
}
