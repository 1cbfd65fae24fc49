// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
import Wetfront.Theme
import Wetfront.ViewModels

// Chooses a photo by its picture and says what it shows; nothing has to be typed. Opens as it is loaded.
Item {
    id: chooser

    required property PhotosViewModel photos
    property int chosen: -1
    property string bank
    property string finding
    property bool keepCameraData: false
    property string problem

    Component.onCompleted: {
        photos.look();
        panel.open();
    }

    Panel {
        id: panel

        title: qsTr("Add a photo")
        contentHeight: body.implicitHeight

        ScrollColumn {
            id: body
            anchors.fill: parent
            margin: 0
            PlainWords {
                text: panel.title
                kind: "heading"
                Layout.fillWidth: true
            }
            PlainWords {
                text: chooser.photos.looking ? qsTr("Looking for pictures") : chooser.photos.offered.length > 0 ? qsTr("The newest in %1 and on what is plugged in. Touch one.").arg(chooser.photos.folder) : qsTr("No picture is in %1, and none on a stick. Take one with the tablet's camera, or plug a stick in.").arg(chooser.photos.folder)
                Layout.fillWidth: true
            }
            Flow {
                spacing: Theme.gap
                Layout.fillWidth: true
                Repeater {
                    model: chooser.photos.offered
                    delegate: TouchTarget {
                        id: offer
                        required property var modelData
                        required property int index
                        text: qsTr("Picture %1").arg(offer.modelData["name"])
                        visible: chooser.chosen < 0 || chooser.chosen === index
                        onClicked: chooser.chosen = chooser.chosen < 0 ? index : -1
                        background: Rectangle {
                            color: Theme.surface
                            radius: Theme.radius
                            border.width: chooser.chosen < 0 ? Theme.border : Theme.borderStrong
                            border.color: chooser.chosen < 0 ? Theme.line : Theme.water
                        }
                        // An image by itself would be as large as its file.
                        contentItem: Item {
                            implicitWidth: Theme.photoSide
                            implicitHeight: Theme.photoSide
                            Image {
                                anchors.fill: parent
                                source: "image://photo/" + offer.modelData["picture"]
                                cache: false
                                fillMode: Image.PreserveAspectFit
                            }
                        }
                    }
                }
            }
            ChoiceRow {
                visible: chooser.chosen >= 0
                label: qsTr("What it shows")
                model: chooser.photos.banks
                current: chooser.bank
                onChosen: value => chooser.bank = value
                Layout.fillWidth: true
            }
            PlainWords {
                visible: chooser.chosen >= 0 && chooser.photos.findings.length > 0
                text: qsTr("To a finding")
                Layout.fillWidth: true
            }
            Repeater {
                model: chooser.chosen >= 0 ? chooser.photos.findings : []
                delegate: TickLine {
                    required property var modelData
                    text: modelData.text
                    ticked: chooser.finding === modelData.value
                    onToggled: wanted => chooser.finding = wanted ? modelData.value : ""
                    Layout.fillWidth: true
                }
            }
            TickLine {
                visible: chooser.chosen >= 0
                text: qsTr("Keep what the camera wrote into it: place, time, owner")
                ticked: chooser.keepCameraData
                onToggled: wanted => chooser.keepCameraData = wanted
                Layout.fillWidth: true
            }
            ErrorLine {
                text: chooser.problem
                Layout.fillWidth: true
            }
            RowLayout {
                spacing: Theme.gap
                Layout.alignment: Qt.AlignRight
                ActionButton {
                    text: qsTr("Cancel")
                    onClicked: panel.close()
                }
                ActionButton {
                    text: qsTr("Add this photo")
                    kind: "primary"
                    enabled: chooser.chosen >= 0
                    onClicked: {
                        chooser.problem = chooser.photos.add(chooser.chosen, chooser.bank, chooser.finding, chooser.keepCameraData);
                        if (chooser.problem.length === 0)
                            panel.close();
                    }
                }
            }
        }
    }
}
