// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Theme

// What was just done, with the way back from it, or why it was not done. Gone while there is nothing to say.
ColumnLayout {
    id: line

    required property string text
    required property bool undoable
    required property string problem

    signal undoAsked

    visible: text.length > 0 || problem.length > 0
    spacing: Theme.gap

    // It stands at the head of a page that may be scrolled away from it.
    function comeIntoSight(): void {
        let around = parent;
        while (around && !(around instanceof ScrollColumn))
            around = around.parent;
        if (around && visible)
            (around as ScrollColumn).scrollTo(0);
    }
    onTextChanged: comeIntoSight()
    onProblemChanged: comeIntoSight()

    Rectangle {
        visible: line.text.length > 0
        color: Theme.waterTint
        radius: Theme.radius
        implicitHeight: row.implicitHeight + 2 * Theme.gap
        Layout.fillWidth: true
        RowLayout {
            id: row
            x: Theme.space
            y: Theme.gap
            width: parent.width - 2 * Theme.space
            spacing: Theme.space
            PlainWords {
                text: line.text
                Accessible.role: Accessible.AlertMessage
                Layout.fillWidth: true
            }
            ActionButton {
                visible: line.undoable
                text: qsTr("Undo")
                pictogram: "undo"
                Accessible.description: line.text
                onClicked: line.undoAsked()
            }
        }
    }
    ErrorLine {
        text: line.problem
        Layout.fillWidth: true
    }
}
