// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
import Wetfront.Theme

// Shown instead of the program when the record file cannot be opened: what happened, what is safe, what to do.
Window {
    id: window

    required property string problem

    width: Theme.windowWidth
    height: Theme.windowHeight
    visible: true
    color: Theme.ground
    title: qsTr("Wetfront cannot open its records")

    ColumnLayout {
        anchors.fill: parent
        anchors.margins: Theme.spaceLarge
        spacing: Theme.space
        StyledText {
            text: window.title
            kind: "heading"
            Layout.fillWidth: true
        }
        StyledText {
            text: window.problem
            Layout.fillWidth: true
        }
        StyledText {
            text: qsTr("Nothing was written and nothing that was recorded is lost.")
            soft: true
            Layout.fillWidth: true
        }
        ActionButton {
            text: qsTr("Close")
            kind: "primary"
            focus: true
            onClicked: window.close()
        }
        Item {
            Layout.fillHeight: true
        }
    }
}
