// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Wetfront.Theme

// Work that takes longer than half a second: how far it is, and a way out where there is one.
Panel {
    id: panel

    property string text
    // 0 to 1; below 0: not known
    property real progress: -1
    property bool cancellable: true

    signal cancelAsked

    title: text
    closePolicy: T.Popup.NoAutoClose

    contentHeight: body.implicitHeight

    ColumnLayout {
        id: body
        anchors.fill: parent
        spacing: Theme.space
        focus: true
        Keys.onEscapePressed: if (panel.cancellable)
            panel.cancelAsked()
        PlainWords {
            text: panel.text
            kind: "title"
            Layout.fillWidth: true
        }
        Rectangle {
            id: track
            implicitHeight: Theme.pictogram
            color: Theme.well
            border.width: Theme.border
            border.color: Theme.line
            clip: true
            Layout.fillWidth: true
            Accessible.role: Accessible.ProgressBar
            Accessible.name: panel.progress < 0 ? panel.text : qsTr("%1 %").arg(Math.round(100 * panel.progress))
            Rectangle {
                visible: panel.progress >= 0
                height: parent.height
                width: parent.width * Math.min(1, panel.progress)
                color: Theme.water
            }
            Hatching {
                id: block
                visible: panel.progress < 0
                height: parent.height
                width: parent.width / 4
                colour: Theme.water
                NumberAnimation on x {
                    running: panel.visible && block.visible
                    from: -block.width
                    to: track.width
                    duration: 1500
                    loops: Animation.Infinite
                }
            }
        }
        ActionButton {
            visible: panel.cancellable
            text: qsTr("Cancel")
            onClicked: panel.cancelAsked()
            Layout.alignment: Qt.AlignRight
        }
    }
}
