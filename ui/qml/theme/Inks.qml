// SPDX-License-Identifier: Apache-2.0
import QtQuick

// The colours of one theme. Text is set in ink, inkSoft, water or warningInk, on any of the grounds; on a fill of
// `water` it is waterPaper. `warning` is for edges, bars and signs; warningPaper is for the sign drawn on it, not for text.
QtObject {
    required property color ground
    required property color surface
    required property color well
    required property color ink
    required property color inkSoft
    required property color line
    required property color water
    required property color waterPaper
    required property color waterTint
    required property color warning
    required property color warningPaper
    required property color warningInk
    required property color warningTint
    required property color disabledInk
    required property color disabledGround
    required property color scrim
}
