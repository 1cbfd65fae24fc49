// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Theme

// A titled section of a page.
Rectangle {
    id: card

    property string title
    property string note
    default property alias content: body.data
    property alias spacing: body.spacing

    implicitWidth: Math.max(head.implicitWidth, body.implicitWidth) + 2 * Theme.space
    implicitHeight: body.y + body.implicitHeight + Theme.space
    color: Theme.surface
    radius: Theme.radius
    border.width: Theme.border
    border.color: Theme.line
    Accessible.role: Accessible.Grouping
    Accessible.name: title

    RowLayout {
        id: head
        x: Theme.space
        y: Theme.space
        width: card.width - 2 * Theme.space
        visible: card.title.length > 0
        spacing: Theme.space
        PlainWords {
            text: card.title
            kind: "title"
            Accessible.role: Accessible.Heading
            Layout.fillWidth: true
        }
        PlainWords {
            visible: text.length > 0
            text: card.note
            soft: true
            horizontalAlignment: Text.AlignRight
            Layout.maximumWidth: head.width / 2
        }
    }
    ColumnLayout {
        id: body
        x: Theme.space
        y: head.visible ? head.y + head.implicitHeight + Theme.gap : Theme.space
        width: card.width - 2 * Theme.space
        spacing: Theme.space
    }
}
