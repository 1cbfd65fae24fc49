// SPDX-License-Identifier: Apache-2.0
pragma Singleton
import QtQuick

// Every colour, type size, distance and touch target of the program. Lengths are millimetres on the glass, so that a
// gloved finger finds the same key on a tablet and on a desktop; mm() turns them into pixels.
QtObject {
    // "sun" (high contrast, light), "shade" or "night".
    property string mode: "sun"

    // Pixels per millimetre of the screen that shows the window, set by the main window. 96 dots per inch until then.
    property real pixelsPerMm: 96 / 25.4

    function mm(length: real): real {
        return Math.round(length * pixelsPerMm);
    }

    // Contrast by WCAG 2.1: in the sun text has 12:1 or more and the running time 15:1; in the other two 7:1 or more.
    readonly property Inks sun: Inks {
        ground: "#f7f3e8"
        surface: "#fffdf6"
        well: "#ffffff"
        ink: "#101417"
        inkSoft: "#1f2429"
        line: "#6f6a5c"
        water: "#062c45"
        waterPaper: "#ffffff"
        waterTint: "#e4eef3"
        warning: "#a63c06"
        warningPaper: "#ffffff"
        warningInk: "#4c1400"
        warningTint: "#fdead3"
        disabledInk: "#6a665b"
        disabledGround: "#ebe6d9"
        scrim: "#b0101417"
    }
    readonly property Inks shade: Inks {
        ground: "#e9e3d4"
        surface: "#f4efe3"
        well: "#faf6ec"
        ink: "#20262b"
        inkSoft: "#3c4247"
        line: "#777161"
        water: "#114865"
        waterPaper: "#fbf8f0"
        waterTint: "#d6e1e6"
        warning: "#9c420f"
        warningPaper: "#fffaf2"
        warningInk: "#6b2606"
        warningTint: "#f3dcc0"
        disabledInk: "#636055"
        disabledGround: "#e0d9c9"
        scrim: "#a020262b"
    }
    readonly property Inks night: Inks {
        ground: "#14181b"
        surface: "#1c2226"
        well: "#0e1214"
        ink: "#e8dfcd"
        inkSoft: "#c0b8a8"
        line: "#7c7a72"
        water: "#8cc0de"
        waterPaper: "#0c1317"
        waterTint: "#1b2d38"
        warning: "#e39a58"
        warningPaper: "#15100b"
        warningInk: "#f1b884"
        warningTint: "#35241a"
        disabledInk: "#8d897f"
        disabledGround: "#24292d"
        scrim: "#c0000000"
    }

    readonly property Inks inks: mode === "night" ? night : mode === "shade" ? shade : sun
    readonly property color ground: inks.ground
    readonly property color surface: inks.surface
    readonly property color well: inks.well
    readonly property color ink: inks.ink
    readonly property color inkSoft: inks.inkSoft
    readonly property color line: inks.line
    readonly property color water: inks.water
    readonly property color waterPaper: inks.waterPaper
    readonly property color waterTint: inks.waterTint
    readonly property color warning: inks.warning
    readonly property color warningPaper: inks.warningPaper
    readonly property color warningInk: inks.warningInk
    readonly property color warningTint: inks.warningTint
    readonly property color disabledInk: inks.disabledInk
    readonly property color disabledGround: inks.disabledGround
    readonly property color scrim: inks.scrim
    readonly property color focus: water

    // The digits of this family all have one width: numbers in a column line up and a running time does not jitter.
    readonly property string family: "DejaVu Sans"
    readonly property real fontSmall: mm(3)
    readonly property real fontBody: mm(3.6)
    readonly property real fontTitle: mm(4.2)
    readonly property real fontHeading: mm(5.4)
    readonly property real fontNumber: mm(6)
    readonly property real fontDisplay: mm(10)
    readonly property real fontRunning: mm(22)

    // WCAG 2.5.5 asks for 44 CSS pixels, 11.6 mm.
    readonly property real target: mm(12)
    // Of the space between two targets.
    readonly property real gap: mm(2)
    readonly property real markHeight: mm(30)
    readonly property real markWidth: mm(60)

    readonly property real spaceSmall: mm(1)
    readonly property real space: mm(3)
    readonly property real spaceLarge: mm(6)
    readonly property real radius: mm(1)
    readonly property real border: Math.max(1, mm(0.25))
    readonly property real borderStrong: Math.max(2, mm(0.6))
    readonly property real focusBorder: Math.max(3, mm(0.8))
    readonly property real pictogramSmall: mm(4.5)
    readonly property real pictogram: mm(6)
    readonly property real pictogramLarge: mm(16)
    // The smallest tablet; a window can be made larger at will.
    readonly property real windowWidth: 1024
    readonly property real windowHeight: 600
    readonly property real readingWidth: mm(150)
    // Of a page on a wide screen: a value stays near its label.
    readonly property real pageWidth: mm(220)
    readonly property real sideWidth: mm(52)
    readonly property real fieldWidth: mm(60)
    readonly property real photoSide: mm(32)
    readonly property real thumbnailWidth: mm(48)
    readonly property real thumbnailHeight: mm(24)
    readonly property real pictureHeight: mm(58)
    readonly property real hatchSpacing: mm(1.6)
    readonly property real scrollBar: mm(1.5)

    // A key of the number pad is 20 mm (Colle & Hiszem 2004: no gain above that). Where the room left for four rows
    // and four columns of keys is smaller, all keys shrink alike, but not below 14 mm: then the pad is cut off rather
    // than made too small for a glove. In landscape that takes a window less than 72 mm high.
    function padKey(availableWidth: real, availableHeight: real): real {
        const room = Math.floor((Math.min(availableWidth, availableHeight) - 3 * gap) / 4);
        return Math.max(mm(14), Math.min(mm(20), room));
    }
}
