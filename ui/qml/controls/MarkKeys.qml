// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Templates as T

// A page on which space, enter and the volume keys mark, wherever on it the focus is.
FocusScope {
    id: page

    signal keyMarked

    // Takes the keyboard from whatever button was pressed last.
    function takeKeyboard(): void {
        rest.forceActiveFocus();
    }

    readonly property var markKeys: [Qt.Key_Space, Qt.Key_Return, Qt.Key_Enter, Qt.Key_VolumeUp, Qt.Key_VolumeDown]

    focus: true
    Component.onCompleted: takeKeyboard()

    // A key that is held down marks once; two quick presses are two, and told apart by what is worked out from them.
    Keys.onPressed: event => {
        event.accepted = markKeys.includes(event.key);
        if (event.accepted && !event.isAutoRepeat)
            page.keyMarked();
    }
    // A finger, or a panel that closes, gives the keyboard to a button, on this page or around it, and the next key would
    // press that instead of marking. A button keeps it where Tab went there, and then its frame shows it.
    function leaveButton(): void {
        const button = Window.activeFocusItem as T.AbstractButton;
        if (button && !button.visualFocus && (activeFocus || !isOverPages(button)))
            takeKeyboard();
    }
    function isOverPages(item: Item): bool {
        let around = item;
        while (around && around !== T.Overlay.overlay)
            around = around.parent;
        return around !== null;
    }
    Connections {
        target: page.Window.window
        function onActiveFocusItemChanged(): void {
            page.leaveButton();
        }
    }
    Item {
        id: rest
        focus: true
        Accessible.ignored: true
    }
}
