// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
import Wetfront.Theme
import Wetfront.ViewModels

// What was taken out of the lists, the last removed first, and the way back for each.
ScrollColumn {
    id: page

    required property SessionViewModel session
    readonly property RemovedViewModel removed: session.removed

    PlainWords {
        text: qsTr("Removed")
        kind: "heading"
        Layout.fillWidth: true
    }
    PlainWords {
        text: qsTr("Nothing of it is deleted. A house brings its visits back, but for those that were removed by themselves.")
        soft: true
        Layout.fillWidth: true
    }
    RemovalLine {
        removed: page.removed
        Layout.fillWidth: true
    }
    PlainWords {
        visible: page.removed.records.length === 0
        text: qsTr("Nothing is removed now.")
        Layout.fillWidth: true
    }
    Repeater {
        model: page.removed.records
        delegate: Rectangle {
            id: line
            required property var modelData
            color: Theme.surface
            radius: Theme.radius
            border.width: Theme.border
            border.color: Theme.line
            implicitHeight: row.implicitHeight + 2 * Theme.gap
            Layout.fillWidth: true
            RowLayout {
                id: row
                x: Theme.space
                y: Theme.gap
                width: parent.width - 2 * Theme.space
                spacing: Theme.space
                ColumnLayout {
                    spacing: Theme.spaceSmall
                    PlainWords {
                        text: line.modelData.title
                        font.bold: true
                        Layout.fillWidth: true
                    }
                    PlainWords {
                        text: line.modelData.detail
                        kind: "small"
                        soft: true
                        Layout.fillWidth: true
                    }
                }
                ActionButton {
                    visible: !page.session.readOnly
                    text: qsTr("Bring back")
                    pictogram: "undo"
                    Accessible.name: qsTr("Bring back %1").arg(line.modelData.title)
                    onClicked: page.removed.bringBack(line.modelData.kind, line.modelData.id)
                }
            }
        }
    }
}
