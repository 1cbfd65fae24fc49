// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
import Wetfront.Theme
import Wetfront.ViewModels

// Shown instead of the program when the record file cannot be opened: what happened, what is safe, what to do.
Window {
    id: window

    required property StartProblemViewModel start

    width: Theme.windowWidth
    height: Theme.windowHeight
    visible: true
    color: Theme.ground
    title: qsTr("Wetfront cannot open its records")

    ScrollColumn {
        anchors.fill: parent

        PlainWords {
            text: window.title
            kind: "heading"
            Layout.fillWidth: true
        }
        PlainWords {
            text: window.start.problem
            Layout.fillWidth: true
        }
        PlainWords {
            visible: text.length > 0
            text: window.start.notice
            Layout.fillWidth: true
        }
        ErrorLine {
            text: window.start.earlier
            Layout.fillWidth: true
        }
        PlainWords {
            visible: window.start.notice.length === 0
            text: qsTr("Wetfront has written nothing: the file is as it was found.")
            soft: true
            Layout.fillWidth: true
        }
        Flow {
            spacing: Theme.gap
            Layout.fillWidth: true
            ActionButton {
                text: qsTr("Close")
                kind: "primary"
                focus: true
                onClicked: window.close()
            }
            ActionButton {
                text: qsTr("Try again")
                onClicked: window.start.tryAgain()
            }
        }
        Card {
            visible: window.start.canLook
            title: qsTr("Look at the records")
            Layout.fillWidth: true
            PlainWords {
                text: qsTr("The file can be read. Houses, visits and sheets are shown; nothing can be timed or entered.")
                Layout.fillWidth: true
            }
            ActionButton {
                text: qsTr("Open read-only")
                onClicked: window.start.look()
            }
        }
        Card {
            visible: window.start.copyDay.length > 0
            title: qsTr("The newest copy that is whole")
            Layout.fillWidth: true
            PlainWords {
                text: window.start.copyHolds
                Layout.fillWidth: true
            }
            PlainWords {
                text: qsTr("The file that cannot be opened is kept beside the records, as it is.")
                Layout.fillWidth: true
            }
            ActionButton {
                text: qsTr("Go back to the copy of %1").arg(window.start.copyDay)
                pictogram: "back"
                onClicked: window.start.goBack()
            }
        }
    }
}
