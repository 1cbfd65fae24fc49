// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick

// A page on which space, enter and the volume keys mark, wherever on it the focus is.
FocusScope {
    id: page

    signal keyMarked

    // Takes the keyboard from whatever button was pressed last.
    function takeKeyboard(): void {
        rest.forceActiveFocus();
    }

    readonly property var markKeys: [Qt.Key_Space, Qt.Key_Return, Qt.Key_Enter, Qt.Key_VolumeUp, Qt.Key_VolumeDown]
    property bool keyHeld: false

    focus: true
    Component.onCompleted: takeKeyboard()

    // A key that is held down marks once: its repeats come as presses and releases too, and not all say that they repeat.
    Keys.onPressed: event => {
        if (!markKeys.includes(event.key))
            return;
        event.accepted = true;
        keyRest.stop();
        if (!keyHeld && !event.isAutoRepeat)
            page.keyMarked();
        keyHeld = true;
    }
    Keys.onReleased: event => {
        if (markKeys.includes(event.key))
            keyRest.restart();
    }
    Timer {
        id: keyRest
        interval: 300
        onTriggered: page.keyHeld = false
    }
    Item {
        id: rest
        focus: true
        Accessible.ignored: true
    }
}
