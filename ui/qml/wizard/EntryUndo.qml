// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
import Wetfront.Theme
import Wetfront.ViewModels

// Takes entries back and makes them again, whichever step they were made on. A touch leaves the keyboard where it is:
// on the pages where it marks, the next key must mark.
RowLayout {
    id: controls

    required property EntryUndoViewModel undo
    required property bool named
    readonly property string undoText: undo?.undoText ?? ""
    readonly property string redoText: undo?.redoText ?? ""

    spacing: Theme.gap

    // What is being typed is an entry too, the latest.
    function handOverTyping(): void {
        (Window.activeFocusItem as TextInput)?.editingFinished();
    }

    ActionButton {
        enabled: controls.undoText.length > 0
        text: controls.named ? qsTr("Entry") : ""
        pictogram: "undo"
        focusPolicy: Qt.TabFocus
        Accessible.name: enabled ? controls.undoText : qsTr("No entry to undo")
        onClicked: {
            controls.handOverTyping();
            controls.undo.undo();
        }
    }
    ActionButton {
        enabled: controls.redoText.length > 0
        pictogram: "redo"
        focusPolicy: Qt.TabFocus
        Accessible.name: enabled ? controls.redoText : qsTr("No entry to redo")
        onClicked: {
            controls.handOverTyping();
            controls.undo.redo();
        }
    }
}
