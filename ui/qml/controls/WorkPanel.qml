// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick

// A BusyPanel for work that mostly takes a moment: what does is not told, but nothing else can be pressed meanwhile.
BusyPanel {
    id: panel

    required property bool working

    visible: working
    dim: late.passed
    opacity: late.passed ? 1 : 0

    Timer {
        id: late
        property bool passed: false
        interval: 500
        running: panel.working
        onRunningChanged: if (running)
            passed = false
        onTriggered: passed = true
    }
}
