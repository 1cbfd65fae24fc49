// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Theme

// Does one thing when clicked. "primary": what most will press next; "quiet": anything else; "warning": cannot be
// taken back or can hurt.
TouchTarget {
    id: button

    property string kind: "quiet"
    property string pictogram

    readonly property color inkColour: !enabled ? Theme.disabledInk : kind === "primary" ? Theme.waterPaper : kind === "warning" ? Theme.warningInk : Theme.water

    background: Rectangle {
        radius: Theme.radius
        color: {
            if (!button.enabled)
                return Theme.disabledGround;
            if (button.kind === "primary")
                return button.down ? Theme.ink : Theme.water;
            if (button.kind === "warning")
                return Theme.warningTint;
            return button.down ? Theme.waterTint : Theme.surface;
        }
        border.width: button.kind === "quiet" && !button.down ? Theme.border : Theme.borderStrong
        border.color: !button.enabled ? Theme.line : button.kind === "warning" ? Theme.warning : Theme.water
    }

    contentItem: RowLayout {
        spacing: Theme.gap
        Item {
            Layout.fillWidth: true
            Layout.preferredWidth: 0
        }
        Pictogram {
            visible: button.pictogram.length > 0
            name: button.pictogram
            colour: button.inkColour
        }
        PlainWords {
            visible: button.text.length > 0
            text: button.text
            color: button.inkColour
            font.bold: button.kind !== "quiet"
            horizontalAlignment: Text.AlignHCenter
            verticalAlignment: Text.AlignVCenter
            Accessible.ignored: true
            Layout.fillWidth: true
            // A layout rounds down, and the last word would go to a second line.
            Layout.preferredWidth: Math.ceil(implicitWidth)
            Layout.maximumWidth: Math.ceil(implicitWidth)
        }
        Item {
            Layout.fillWidth: true
            Layout.preferredWidth: 0
        }
    }
}
