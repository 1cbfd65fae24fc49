// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Theme

// Something to confirm, over the whole width. `ticked` belongs to the page: a press only asks, through toggled().
Item {
    id: line

    required property string text
    property string detail
    property bool ticked: false

    signal toggled(bool wanted)

    implicitWidth: target.implicitWidth
    implicitHeight: target.implicitHeight

    TouchTarget {
        id: target
        anchors.fill: parent
        text: line.text
        Accessible.role: Accessible.CheckBox
        Accessible.description: line.detail
        Accessible.checkable: true
        Accessible.checked: line.ticked
        onClicked: line.toggled(!line.ticked)

        background: Rectangle {
            radius: Theme.radius
            color: !target.enabled ? Theme.disabledGround : target.down || line.ticked ? Theme.waterTint : Theme.surface
            border.width: Theme.border
            border.color: Theme.line
        }
        contentItem: RowLayout {
            spacing: Theme.space
            Rectangle {
                implicitWidth: Theme.pictogram * 1.2
                implicitHeight: implicitWidth
                color: Theme.well
                radius: Theme.radius
                border.width: Theme.borderStrong
                border.color: target.enabled ? Theme.water : Theme.line
                Pictogram {
                    anchors.centerIn: parent
                    visible: line.ticked
                    name: "tick"
                    colour: target.enabled ? Theme.water : Theme.disabledInk
                }
            }
            ColumnLayout {
                spacing: 0
                PlainWords {
                    text: line.text
                    Accessible.ignored: true
                    Layout.fillWidth: true
                }
                PlainWords {
                    visible: text.length > 0
                    text: line.detail
                    kind: "small"
                    soft: true
                    Accessible.ignored: true
                    Layout.fillWidth: true
                }
            }
        }
    }
}
