// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Theme

// One of a few, all in sight. `current` belongs to the page: a press only asks, through chosen().
Item {
    id: row

    property string label
    required property var model
    property var current

    signal chosen(var value)

    implicitWidth: Math.max(caption.implicitWidth, options.implicitWidth)
    implicitHeight: options.y + options.implicitHeight

    Accessible.role: Accessible.Grouping
    Accessible.name: label

    function step(from: int, by: int): void {
        const next = repeater.itemAt(from + by) as TouchTarget;
        if (next) {
            next.forceActiveFocus(Qt.TabFocusReason);
            next.clicked();
        }
    }

    PlainWords {
        id: caption
        width: parent.width
        visible: text.length > 0
        text: row.label
        Accessible.ignored: true
    }
    Flow {
        id: options
        y: caption.visible ? caption.implicitHeight + Theme.spaceSmall : 0
        width: parent.width
        spacing: Theme.gap
        Repeater {
            id: repeater
            model: row.model
            delegate: TouchTarget {
                id: option

                required property var modelData
                required property int index

                readonly property bool isCurrent: modelData.value === row.current
                readonly property color inkColour: !enabled ? Theme.disabledInk : isCurrent ? Theme.waterPaper : Theme.ink

                text: modelData.text
                Accessible.role: Accessible.RadioButton
                Accessible.checkable: true
                Accessible.checked: isCurrent
                onClicked: row.chosen(modelData.value)
                Keys.onLeftPressed: row.step(index, -1)
                Keys.onUpPressed: row.step(index, -1)
                Keys.onRightPressed: row.step(index, 1)
                Keys.onDownPressed: row.step(index, 1)

                background: Rectangle {
                    radius: Theme.radius
                    color: !option.enabled ? Theme.disabledGround : option.isCurrent ? Theme.water : option.down ? Theme.waterTint : Theme.surface
                    border.width: Theme.border
                    border.color: option.enabled ? Theme.water : Theme.line
                }
                contentItem: RowLayout {
                    spacing: Theme.gap
                    Pictogram {
                        visible: option.isCurrent
                        name: "tick"
                        size: Theme.pictogramSmall
                        colour: option.inkColour
                    }
                    PlainWords {
                        text: option.text
                        color: option.inkColour
                        font.bold: option.isCurrent
                        horizontalAlignment: Text.AlignHCenter
                        Accessible.ignored: true
                        Layout.fillWidth: true
                        Layout.preferredWidth: Math.ceil(implicitWidth)
                    }
                }
            }
        }
    }
}
