// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import Wetfront.Theme

// Marks an event of the water. It counts when the finger goes down, not when it is lifted. Keys are the page's: space,
// enter and the volume keys must mark wherever the focus is, and only once.
Item {
    id: button

    required property string text
    property string detail
    property string kind: "primary"
    property bool down: false

    signal pressed

    readonly property color inkColour: !enabled ? Theme.disabledInk : kind === "primary" ? Theme.waterPaper : Theme.water

    implicitWidth: Theme.markWidth
    implicitHeight: Theme.markHeight

    Accessible.role: Accessible.Button
    Accessible.name: text
    Accessible.description: detail
    Accessible.onPressAction: pressed()

    Rectangle {
        anchors.fill: parent
        radius: Theme.radius
        color: !button.enabled ? Theme.disabledGround : button.kind === "primary" ? (button.down ? Theme.ink : Theme.water) : (button.down ? Theme.waterTint : Theme.surface)
        border.width: Theme.borderStrong
        border.color: button.enabled ? Theme.water : Theme.line
    }
    // A press is seen at once and without colour too.
    Rectangle {
        anchors.fill: parent
        anchors.margins: Theme.gap
        visible: button.down
        color: "transparent"
        radius: Theme.radius
        border.width: Theme.borderStrong
        border.color: button.inkColour
    }
    Column {
        anchors.centerIn: parent
        width: parent.width - 2 * Theme.spaceLarge
        spacing: Theme.spaceSmall
        PlainWords {
            width: parent.width
            kind: "display"
            // What needs more lines than there is room for gets smaller letters: a sentence is never cut.
            fontSizeMode: Text.Fit
            minimumPixelSize: Theme.fontTitle
            height: Math.min(implicitHeight, button.height * 0.6)
            font.bold: true
            text: button.text
            color: button.inkColour
            horizontalAlignment: Text.AlignHCenter
            verticalAlignment: Text.AlignVCenter
            Accessible.ignored: true
        }
        PlainWords {
            width: parent.width
            visible: text.length > 0
            text: button.detail
            color: button.inkColour
            kind: "title"
            font.bold: false
            maximumLineCount: 1
            elide: Text.ElideRight
            horizontalAlignment: Text.AlignHCenter
            Accessible.ignored: true
        }
    }
    // Every finger that comes down is a press, with others on the glass too, and wherever it slides to. A second one beside
    // it is told apart by what is worked out from the presses.
    MultiPointTouchArea {
        anchors.fill: parent
        onPressed: {
            button.down = true;
            button.pressed();
        }
        onReleased: button.down = false
        onCanceled: button.down = false
    }
}
